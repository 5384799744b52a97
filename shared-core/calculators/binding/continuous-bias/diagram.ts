import type { Diagram, DiagramPart, DiagramPoint } from '#core/calculators/diagram';
import type { ContinuousBiasDetails, ContinuousBiasInput } from './input';
import { seamedSide } from './work';

/** With more lines than this, a number at every end would overlap the next. */
const MOST_NUMBERS = 12;

/** Left: the square with its diagonal. Right: the sewn parallelogram with its lines, numbered where they meet in the tube. */
export function continuousBiasDiagram(input: ContinuousBiasInput, details: ContinuousBiasDetails): Diagram {
  const { side } = details;
  const gap = side / 4;
  const between = seamedSide({ side, seam: input.seamAllowance });
  return {
    title: 'The square, and the parallelogram sewn from it with the lines to draw',
    width: 2 * side + gap,
    height: side + between,
    parts: [...squareParts(side), ...sewnParts(input, details, side + gap)],
  };
}

function squareParts(side: number): readonly DiagramPart[] {
  const corners = [point(0, 0), point(side, 0), point(side, side), point(0, side)];
  return [
    { part: 'polygon', points: corners, tone: 'fabric' },
    { part: 'line', from: point(0, side), to: point(side, 0), tone: 'cut' },
    { part: 'dimension', from: point(0, side), to: point(side, side), offset: -side / 12, length: side },
  ];
}

/** In the parallelogram a line is y = x + c with y upward; in the drawing y runs down, so a height h is drawn at side - h. */
function sewnParts(
  input: ContinuousBiasInput,
  { side, rows }: ContinuousBiasDetails,
  left: number,
): readonly DiagramPart[] {
  const { stripWidth: strip, seamAllowance: seam } = input;
  const between = seamedSide({ side, seam });
  const at = (x: number, height: number) => point(left + x, side - height);
  const onLine = (line: number, x: number) => at(x, x - between + line * strip * Math.SQRT2);
  const outline = [at(0, -between), at(side, side - between), at(side, side), at(0, 0)];
  const last = [onLine(rows, 0), onLine(rows, side), at(side, side), at(0, 0)];
  const lines = Array.from({ length: rows }, (_, index) => index + 1);
  const numbered = lines.slice(0, rows > MOST_NUMBERS ? 3 : rows);
  return [
    { part: 'polygon', points: outline, tone: 'fabric' },
    { part: 'polygon', points: last, tone: 'leftover' },
    { part: 'line', from: at(seam, seam), to: at(side - seam, seam), tone: 'seam' },
    { part: 'line', from: at(seam, seam - between), to: at(seam, seam), tone: 'seam' },
    {
      part: 'line',
      from: at(side - seam, side - seam - between),
      to: at(side - seam, side - seam),
      tone: 'seam',
    },
    ...lines.map((line): DiagramPart => ({
      part: 'line',
      from: onLine(line, 0),
      to: onLine(line, side),
      tone: 'mark',
    })),
    ...numbered.flatMap((line): readonly DiagramPart[] => [
      { part: 'label', at: onLine(line, 0), text: String(line), anchor: 'end' },
      { part: 'label', at: onLine(line - 1, side), text: String(line), anchor: 'start' },
    ]),
  ];
}

function point(x: number, y: number): DiagramPoint {
  return { x, y };
}

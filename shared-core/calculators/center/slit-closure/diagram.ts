import type { Diagram, DiagramPart, DiagramPoint } from '#core/calculators/diagram';
import type { SlitClosureInput } from './input';
import { type SlitClosureDetails, sizeOf } from './work';

/** The slit lying on its side, the outer edge at the left and the hole at the right. */
export function slitClosureDiagram(input: SlitClosureInput, details: SlitClosureDetails): Diagram {
  const { slit, overlap } = input;
  const size = sizeOf(input.closing);
  const half = Math.max(0.15 * slit, Math.abs(buttonIn(input, details)) + size, 1.5 * overlap);
  const margin = Math.max(0.05 * slit, size);
  const at = (along: number, down: number): DiagramPoint => ({ x: margin + along, y: half + down });
  const side = (far: number): DiagramPart => ({
    part: 'polygon',
    points: [at(0, 0), at(slit, 0), at(slit, far), at(0, far)],
    tone: 'fabric',
  });
  const flap: readonly DiagramPart[] =
    overlap === 0
      ? []
      : [
          {
            part: 'polygon',
            points: [at(0, 0), at(slit, 0), at(slit, 0 - overlap), at(0, 0 - overlap)],
            tone: 'fabric-alternate',
          },
        ];
  const reach = half / 2;
  const places = details.positions.map((along): DiagramPart => {
    return details.parts.with === 'ties'
      ? { part: 'line', from: at(along, -reach), to: at(along, reach), tone: 'mark' }
      : { part: 'circle', center: at(along, buttonIn(input, details)), radius: size / 2, tone: 'mark' };
  });
  const dimension = (from: number, to: number): DiagramPart => ({
    part: 'dimension',
    from: at(from, -half),
    to: at(to, -half),
    offset: -half / 4,
    length: to - from,
  });
  const [first = 0, second] = details.positions;
  return {
    title: 'The slit, from the outer edge to the hole',
    width: slit + 2 * margin,
    height: 2 * half,
    parts: [
      side(-half),
      side(half),
      ...flap,
      { part: 'line', from: at(0, 0), to: at(slit, 0), tone: 'cut' },
      ...places,
      ...(first > 0 ? [dimension(0, first)] : []),
      ...(second === undefined ? [] : [dimension(first, second)]),
    ],
  };
}

/** From the edge of the lower side down to the middle of a button; up, into the flap, where the flap carries it. */
function buttonIn({ overlap }: SlitClosureInput, { parts }: SlitClosureDetails): number {
  return parts.with === 'buttons-and-loops' ? parts.buttonIn : (0 - overlap) / 2;
}

import type { Point } from '#core/geometry/point';
import { UNITS_PER_INCH } from '#core/units/length';
import type { Diagram, DiagramPart } from '../diagram';
import { outlineBounds } from '../outline/outline-measures';
import { outlinePart } from '../outline/outline-part';
import type { BackingInput } from './input';
import { seamPlaces } from './seams';
import type { BackingDetails, PanelWay } from './work';

const MARGIN = 6 * UNITS_PER_INCH;

/** The finished backing with its seams, the top on it, and both measures. */
export function backingDiagram(
  input: BackingInput,
  { width, length }: BackingDetails,
  way: PanelWay,
): Diagram {
  const left = MARGIN;
  const top = MARGIN;
  const center = { x: left + width / 2, y: top + length / 2 };
  const parts: readonly DiagramPart[] = [
    ...panelParts(way, { left, top, width, length }),
    outlinePart(input.outline, center, 'plan'),
    ...holeParts(input, center),
    {
      part: 'dimension',
      from: { x: left, y: top + length },
      to: { x: left + width, y: top + length },
      offset: -MARGIN / 2,
      length: width,
    },
    {
      part: 'dimension',
      from: { x: left, y: top },
      to: { x: left, y: top + length },
      offset: -MARGIN / 2,
      length,
    },
  ];
  return {
    title: 'The backing and its panels',
    width: width + 2 * MARGIN,
    height: length + 2 * MARGIN,
    parts,
  };
}

/** Where the hole and the slit will be cut. */
function holeParts({ outline, hole, hasSlit }: BackingInput, center: Point): readonly DiagramPart[] {
  if (hole === null) return [];
  const radius = hole.diameter / 2;
  const slit: DiagramPart = {
    part: 'line',
    from: { x: center.x, y: center.y + radius },
    to: { x: center.x, y: center.y + outlineBounds(outline).length / 2 },
    tone: 'cut',
  };
  return [{ part: 'circle', center, radius, tone: 'cut' }, ...(hasSlit ? [slit] : [])];
}

/** Where the backing is in the drawing. */
interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly length: number;
}

/** Drawn as pressed open: each panel from seam to seam, with the joins of a panel made from strips. */
function panelParts(way: PanelWay, backing: Rectangle): readonly DiagramPart[] {
  const { left, top, width, length } = backing;
  const isUp = way.panelsRun === 'up';
  const [span, along] = isUp ? [width, length] : [length, width];
  const point = (a: number, b: number) => (isUp ? { x: left + a, y: top + b } : { x: left + b, y: top + a });
  const seams = seamPlaces(way, span);
  const panels = [0, ...seams].map((from, index): DiagramPart => {
    const to = seams[index] ?? span;
    const points = [point(from, 0), point(to, 0), point(to, along), point(from, along)];
    return { part: 'polygon', points, tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
  const stripStep = way.lastStripLength - 2 * way.fabric.seam;
  const joins = Array.from(
    { length: way.last === 'outer' ? 0 : way.lastStrips - 1 },
    (_, index) => (index + 1) * stripStep + way.fabric.seam,
  );
  return [
    ...panels,
    ...seams.map((at): DiagramPart => ({
      part: 'line',
      from: point(at, 0),
      to: point(at, along),
      tone: 'seam',
    })),
    ...joins.map((at): DiagramPart => {
      return { part: 'line', from: point(seams.at(-1) ?? 0, at), to: point(span, at), tone: 'seam' };
    }),
  ];
}

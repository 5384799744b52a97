import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { PrairiePointsDetails } from './work';

/** So many points are drawn at most, from the first corner on. */
const MOST_DRAWN = 8;

/** The points at the beginning of the first side, tips down, with their seam. */
export function prairiePointsDiagram({ sides, base, height }: PrairiePointsDetails): Diagram | null {
  const [first] = sides;
  if (first === undefined) return null;
  const drawn = Math.min(MOST_DRAWN, first.points);
  const width = (drawn - 1) * first.pitch + base;
  const top = 2 * height;
  const points = Array.from({ length: drawn }, (_, index): DiagramPart => {
    const left = index * first.pitch;
    const corners = [
      { x: left, y: top },
      { x: left + base, y: top },
      { x: left + base / 2, y: top + height },
    ];
    return { part: 'polygon', points: corners, tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
  const body = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: top },
    { x: 0, y: top },
  ];
  const pitch: DiagramPart = {
    part: 'dimension',
    from: { x: base / 2, y: top + height },
    to: { x: base / 2 + first.pitch, y: top + height },
    offset: -height / 2,
    length: first.pitch,
  };
  return {
    title: 'The points along the edge, from one corner on',
    width,
    height: top + height,
    parts: [
      { part: 'polygon', points: body, tone: 'leftover' },
      ...points,
      { part: 'line', from: { x: 0, y: top }, to: { x: width, y: top }, tone: 'seam' },
      ...(drawn > 1 ? [pitch] : []),
    ],
  };
}

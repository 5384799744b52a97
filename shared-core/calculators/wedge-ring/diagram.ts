import { regularPolygonCorners, regularPolygonFromInradius } from '#core/geometry/regular-polygon';
import { pointMove } from '#core/geometry/point';
import type { Polygon } from '#core/geometry/polygon';
import type { Diagram, DiagramPart, DiagramPoint } from '../diagram';
import type { WedgeRingInput } from './input';
import { wedgePolygon, type WedgeRingWork } from './work';

/** The finished ring, and to its right one wedge as cut with its seam lines. */
export function wedgeRingDiagram(input: WedgeRingInput, work: WedgeRingWork): Diagram {
  const { outerRadius, wedges } = input;
  const reach = outerRadius + work.beyondCircle;
  const margin = reach / 4;
  const center = { x: margin + reach, y: margin + reach };
  const wedgeAt = { x: 3 * margin + 2 * reach, y: margin };
  return {
    title: 'The finished ring, and one wedge as cut',
    width: wedgeAt.x + work.cut.long + 2 * margin,
    height: 2 * margin + Math.max(2 * reach, work.cut.height),
    parts: [
      ...ringParts(input, center),
      ...wedgeParts(input, work, wedgeAt),
      label(`${String(wedges)} wedges`, center),
    ],
  };
}

function label(text: string, at: DiagramPoint): DiagramPart {
  return { part: 'label', at, text, anchor: 'middle' };
}

function ringParts(
  { wedges, innerRadius, outerRadius }: WedgeRingInput,
  center: DiagramPoint,
): readonly DiagramPart[] {
  const start = Math.PI / wedges - Math.PI / 2;
  const corners = (radius: number): Polygon =>
    regularPolygonCorners(regularPolygonFromInradius(wedges, radius), center, start);
  const [inner, outer] = [corners(innerRadius), corners(outerRadius)];
  return outer.map((corner, index) => {
    const next = (index + 1) % wedges;
    const points = [corner, outer[next] ?? corner, inner[next] ?? corner, inner[index] ?? corner];
    return { part: 'polygon', points, tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
}

function wedgeParts(
  input: WedgeRingInput,
  { cut, finished }: WedgeRingWork,
  at: DiagramPoint,
): readonly DiagramPart[] {
  const moved = (polygon: Polygon, by: DiagramPoint) => polygon.map((point) => pointMove(point, by));
  const points = moved(wedgePolygon(cut), at);
  const inside = { x: at.x + (cut.long - finished.long) / 2, y: at.y + input.seamAllowance };
  const [right, bottom] = [at.x + cut.long, at.y + cut.height];
  const shortFrom = at.x + (cut.long - cut.short) / 2;
  const offset = input.outerRadius / 12;
  return [
    { part: 'polygon', points, tone: 'fabric' },
    { part: 'polygon', points: moved(wedgePolygon(finished), inside), tone: 'seam' },
    { part: 'dimension', from: at, to: { x: right, y: at.y }, offset, length: cut.long },
    {
      part: 'dimension',
      from: { x: shortFrom + cut.short, y: bottom },
      to: { x: shortFrom, y: bottom },
      offset,
      length: cut.short,
    },
    {
      part: 'dimension',
      from: { x: right, y: at.y },
      to: { x: right, y: bottom },
      offset,
      length: cut.height,
    },
  ];
}

import { type Point, pointDistance, pointMove } from '#core/geometry/point';
import type { Diagram, DiagramPart, Tone } from '#core/calculators/diagram';
import type { Found, NamedPoint } from './found';

/** How many arcs are drawn with their distances; more would hide each other. */
const ARCS_DRAWN = 3;

/** Half the width of a drawn arc, in degrees. */
const ARC_HALF = 8;

/** Room around the piece for the names of its points, as a share of its size. */
const MARGIN = 0.12;

/** The piece with what was measured across it, and the arcs that cross at its center. */
export function centerFindDiagram({ picture }: Found): Diagram {
  const { edge, named, center, lines, folds = [], motif } = picture;
  const reach = edge.kind === 'polygon' ? edge.points : circleBounds(edge);
  const every = [...reach, ...named.map(({ point }) => point)];
  const [xs, ys] = [every.map(({ x }) => x), every.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [across, down] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const margin = MARGIN * Math.max(across, down);
  const shift = { x: margin - left, y: margin - top };
  const size = Math.min(across, down);
  const moved = (point: Point) => pointMove(point, shift);
  const line = (from: Point, to: Point, tone: Tone): DiagramPart => ({
    part: 'line',
    from: moved(from),
    to: moved(to),
    tone,
  });
  return {
    title: 'The piece with its measured points, and the arcs that cross at the center',
    width: across + 2 * margin,
    height: down + 2 * margin,
    parts: [
      edge.kind === 'polygon'
        ? { part: 'polygon', points: edge.points.map(moved), tone: 'fabric' }
        : { part: 'circle', center: moved(edge.center), radius: edge.radius, tone: 'fabric' },
      ...lines.map(([from, to]) => line(from, to, 'plan')),
      ...folds.map(([from, to]) => line(from, to, 'fold')),
      ...named.slice(0, ARCS_DRAWN).flatMap(({ point }) => arcParts(moved(point), moved(center))),
      ...named.filter(({ name }) => name !== '').map((one) => nameLabel(one, center, { margin, moved })),
      ...(motif === null ? [] : [spot(moved(motif), size / 40, 'warning')]),
      spot(moved(center), size / 80, 'mark'),
    ],
  };
}

function circleBounds({
  center,
  radius,
}: {
  readonly center: Point;
  readonly radius: number;
}): readonly Point[] {
  return [
    { x: center.x - radius, y: center.y - radius },
    { x: center.x + radius, y: center.y + radius },
  ];
}

function spot(center: Point, radius: number, tone: Tone): DiagramPart {
  return { part: 'circle', center, radius, tone };
}

/** A short arc through the center, and its distance from the point it is chalked from. */
function arcParts(from: Point, center: Point): readonly DiagramPart[] {
  const radius = pointDistance(from, center);
  const toward = (Math.atan2(center.y - from.y, center.x - from.x) * 180) / Math.PI;
  return [
    {
      part: 'arc',
      center: from,
      radius,
      fromDegrees: toward - ARC_HALF,
      toDegrees: toward + ARC_HALF,
      tone: 'mark',
    },
    { part: 'dimension', from, to: center, offset: 0, length: radius },
  ];
}

interface LabelPlace {
  readonly margin: number;
  readonly moved: (point: Point) => Point;
}

/** Outside the edge, away from the center. */
function nameLabel({ name, point }: NamedPoint, center: Point, { margin, moved }: LabelPlace): DiagramPart {
  const away = pointDistance(point, center);
  const out = away === 0 ? 0 : margin / 2 / away;
  const at = { x: point.x + out * (point.x - center.x), y: point.y + out * (point.y - center.y) };
  return { part: 'label', at: moved(at), text: name, anchor: 'middle' };
}

import { pairsAround } from './around';
import type { Point } from './point';
import { type Polygon, polygonIsSimple, polygonSides, polygonSignedArea } from './polygon';
import type { Segment } from './segment';

/**
 * Moves every side outward by `distance` and extends it until it meets its neighbors (a miter join): a finished patch grown by
 * the seam allowance is the cut patch. Corners keep their order. A negative distance shrinks the cut patch to the finished one.
 * Throws RangeError if the polygon is not simple, if a notch is too narrow to grow, or if the patch is too small to shrink.
 */
export function growPolygon(polygon: Polygon, distance: number): Polygon {
  if (!Number.isFinite(distance)) throw new RangeError(`Cannot grow by ${String(distance)}`);
  if (!polygonIsSimple(polygon))
    throw new RangeError('Cannot grow a polygon that crosses itself or has no area');
  const outward = polygonSignedArea(polygon) > 0 ? 1 : -1;
  const sides = polygonSides(polygon);
  const fromLast = [...sides.slice(-1), ...sides.slice(0, -1)];
  const moved = pairsAround(fromLast).map(([before, after]) => ({
    corner: miterCorner(after.from, direction(before), direction(after), outward * distance),
    ahead: direction(after),
  }));
  const grown = moved.map(({ corner }) => corner);
  const doSidesRemain = pairsAround(moved).every(([{ corner, ahead }, next]) => {
    return (next.corner.x - corner.x) * ahead.x + (next.corner.y - corner.y) * ahead.y > 0;
  });
  if (!doSidesRemain || !polygonIsSimple(grown)) {
    throw new RangeError(`Growing by ${String(distance)} leaves no simple polygon`);
  }
  return grown;
}

function direction({ from, to }: Segment): Point {
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
}

/**
 * Moves the corner to the right of both directions by `distance`: along the sum of the two unit normals (y, -x), by the distance
 * divided by 1 + their dot product (2 on a straight side).
 */
function miterCorner(corner: Point, before: Point, after: Point, distance: number): Point {
  const reach = distance / (1 + before.x * after.x + before.y * after.y);
  return { x: corner.x + reach * (before.y + after.y), y: corner.y - reach * (before.x + after.x) };
}

import type { Point } from './point';
import { type Polygon, polygonIsSimple, polygonSides, polygonSignedArea } from './polygon';

/**
 * Every side moved outward by `distance` and joined to its neighbours by prolonging both (miter join): a finished patch grown
 * by the seam is the cut patch. Corners keep their order. A negative distance shrinks: the cut patch becomes the finished one.
 * Throws RangeError unless the polygon is simple, or when a notch is too narrow (shrinking: the patch too small) for the distance.
 */
export function growPolygon(polygon: Polygon, distance: number): Polygon {
  if (!Number.isFinite(distance)) throw new RangeError(`Cannot grow by ${String(distance)}`);
  if (!polygonIsSimple(polygon))
    throw new RangeError('Cannot grow a polygon that crosses itself or has no area');
  const outward = polygonSignedArea(polygon) > 0 ? 1 : -1;
  const normals = polygonSides(polygon).map(({ from, to }) => {
    const size = Math.hypot(to.x - from.x, to.y - from.y);
    return { x: (outward * (to.y - from.y)) / size, y: (outward * (from.x - to.x)) / size };
  });
  const grown = polygon.map((corner, index) => {
    const before = normals.at(index - 1) ?? corner;
    const after = normals[index] ?? corner;
    return miterCorner(corner, before, after, distance);
  });
  if (!doSidesKeepDirection(polygon, grown) || !polygonIsSimple(grown)) {
    throw new RangeError(`Growing by ${String(distance)} leaves no simple polygon`);
  }
  return grown;
}

/** The corner moved along the sum of both unit normals; their dot product tells how far, 1 on a straight side. */
function miterCorner(corner: Point, before: Point, after: Point, distance: number): Point {
  const reach = distance / (1 + before.x * after.x + before.y * after.y);
  return { x: corner.x + reach * (before.x + after.x), y: corner.y + reach * (before.y + after.y) };
}

function doSidesKeepDirection(before: Polygon, after: Polygon): boolean {
  const sidesAfter = polygonSides(after);
  return polygonSides(before).every(({ from, to }, index) => {
    const moved = sidesAfter[index];
    if (moved === undefined) return false;
    return (to.x - from.x) * (moved.to.x - moved.from.x) + (to.y - from.y) * (moved.to.y - moved.from.y) > 0;
  });
}

import { type Point, pointDistance } from '#core/geometry/point';
import { roundDownTo } from '#core/units/rounding';
import { type Polygon, polygonPerimeter, polygonSides } from '#core/geometry/polygon';

/** The point of a closed path at a share of its length from its first corner; a share past 1 goes around again. */
export function pointAlong(path: Polygon, share: number): Point {
  let left = (share - roundDownTo(share, 1)) * polygonPerimeter(path);
  for (const { from, to } of polygonSides(path)) {
    const side = pointDistance(from, to);
    if (left <= side && side > 0) {
      const part = left / side;
      return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
    }
    left -= side;
  }
  return path[0] ?? { x: 0, y: 0 };
}

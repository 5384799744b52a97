import type { Point } from './point';
import { type Polygon, polygonContainsPoint, polygonSides } from './polygon';
import { pointToSegmentDistance } from './segment';

/** Distance from a point to the nearest edge of the polygon: positive inside, negative outside. */
export function clearanceOfPoint(polygon: Polygon, point: Point): number {
  const nearest = Math.min(...polygonSides(polygon).map((side) => pointToSegmentDistance(point, side)));
  return polygonContainsPoint(polygon, point) ? nearest : -nearest;
}

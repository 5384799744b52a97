import type { Point } from './point';
import { type Polygon, polygonContainsPoint, polygonSides } from './polygon';
import { pointToSegmentDistance } from './segment';

/** Distance from a point to the polygon's edge: positive inside, negative outside. */
export function clearanceOfPoint(polygon: Polygon, point: Point): number {
  const nearest = Math.min(...polygonSides(polygon).map((side) => pointToSegmentDistance(point, side)));
  return polygonContainsPoint(polygon, point) ? nearest : -nearest;
}

/** Fabric left between a circle and the polygon around it where they come closest; negative by how far it sticks out. */
export function clearanceOfCircle(polygon: Polygon, center: Point, radius: number): number {
  return clearanceOfPoint(polygon, center) - radius;
}

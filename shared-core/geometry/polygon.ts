import { pairsAround } from './around';
import { type Point, pointDistance } from './point';
import { pointToSegmentDistance, type Segment, segmentsMeet } from './segment';

/** Corners in order; the last is joined to the first. Every function here throws RangeError for fewer than three corners. */
export type Polygon = readonly Point[];

/** In units of 1/320 mm: a point this close to a side is on it. Far below what any fabric shows. */
const ON_EDGE = 1e-6;

/** In radians: a corner sharper than this turns back on itself. Above the rounding error of atan2. */
const SPIKE_ANGLE = 1e-9;

/** The sides in order: the first runs from the first corner to the second. */
export function polygonSides(polygon: Polygon): readonly Segment[] {
  if (polygon.length < 3) throw new RangeError(`No polygon has ${String(polygon.length)} corners`);
  return pairsAround(polygon).map(([from, to]) => ({ from, to }));
}

/**
 * Signed area in square units: positive where the corners run from the x axis towards the y axis (counterclockwise, y up).
 * Measured from the first corner, so a small patch far from the origin loses no digits.
 */
export function polygonSignedArea(polygon: Polygon): number {
  let [twice, x, y] = [0, 0, 0];
  for (const { from, to } of polygonSides(polygon)) {
    const [nextX, nextY] = [x + to.x - from.x, y + to.y - from.y];
    twice += x * nextY - nextX * y;
    [x, y] = [nextX, nextY];
  }
  return twice / 2;
}

export function polygonArea(polygon: Polygon): number {
  return Math.abs(polygonSignedArea(polygon));
}

/** The point on which a sheet of this shape balances, for corners in either direction; undefined if it has no area. */
export function polygonCentroid(polygon: Polygon): Point | undefined {
  const [first = { x: 0, y: 0 }] = polygon;
  const twice = 2 * polygonSignedArea(polygon);
  if (twice === 0) return undefined;
  let [x, y] = [0, 0];
  for (const { from, to } of polygonSides(polygon)) {
    const [one, other] = [
      { x: from.x - first.x, y: from.y - first.y },
      { x: to.x - first.x, y: to.y - first.y },
    ];
    const cross = one.x * other.y - other.x * one.y;
    x += (one.x + other.x) * cross;
    y += (one.y + other.y) * cross;
  }
  return { x: first.x + x / (3 * twice), y: first.y + y / (3 * twice) };
}

export function polygonPerimeter(polygon: Polygon): number {
  return polygonSides(polygon).reduce((sum, { from, to }) => sum + pointDistance(from, to), 0);
}

/** Whether the point is inside or on the edge. */
export function polygonContainsPoint(polygon: Polygon, point: Point): boolean {
  const sides = polygonSides(polygon);
  if (sides.some((side) => pointToSegmentDistance(point, side) <= ON_EDGE)) return true;
  const crossed = sides.filter(({ from, to }) => {
    if (from.y > point.y === to.y > point.y) return false;
    return point.x < from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x);
  });
  return crossed.length % 2 === 1;
}

/** Whether every side has a length and touches only its neighbors, and those only at the shared corner. */
export function polygonIsSimple(polygon: Polygon): boolean {
  const sides = polygonSides(polygon);
  const isWithoutSpikes = pairsAround(sides).every(([side, next]) => {
    return pointDistance(side.from, side.to) > 0 && Math.abs(signedTurn(side, next)) < Math.PI - SPIKE_ANGLE;
  });
  const doSidesKeepApart = sides.every((side, index) => {
    const others = sides.slice(index + 2, index === 0 ? -1 : undefined);
    return others.every((other) => !segmentsMeet(side, other));
  });
  return isWithoutSpikes && doSidesKeepApart;
}

/** The angle from one direction to the next in radians, positive from the x axis towards the y axis. */
function signedTurn(side: Segment, next: Segment): number {
  const [ax, ay] = [side.to.x - side.from.x, side.to.y - side.from.y];
  const [bx, by] = [next.to.x - next.from.x, next.to.y - next.from.y];
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

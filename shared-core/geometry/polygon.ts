import { type Point, pointDistance } from './point';
import { pointToSegmentDistance, type Segment, segmentsMeet } from './segment';

/** Corners in order, the last joined to the first. Every function throws RangeError for fewer than three corners. */
export type Polygon = readonly Point[];

/** The sides in order: the first runs from the first corner to the second. */
export function polygonSides(polygon: Polygon): readonly Segment[] {
  if (polygon.length < 3)
    throw new RangeError(`A polygon has three corners or more, not ${String(polygon.length)}`);
  return polygon.map((from, index) => ({ from, to: polygon[(index + 1) % polygon.length] ?? from }));
}

/** Signed area in square units: positive where the corners run from the x axis towards the y axis (counterclockwise, y up). */
export function polygonSignedArea(polygon: Polygon): number {
  const origin = polygon[0] ?? { x: 0, y: 0 };
  const twice = polygonSides(polygon).reduce(
    (sum, { from, to }) =>
      sum + (from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y),
    0,
  );
  return twice / 2;
}

export function polygonArea(polygon: Polygon): number {
  return Math.abs(polygonSignedArea(polygon));
}

export function polygonPerimeter(polygon: Polygon): number {
  return polygonSides(polygon).reduce((sum, { from, to }) => sum + pointDistance(from, to), 0);
}

/** Whether the point lies inside or on the edge (within 1e-6 units, far below any cloth). */
export function polygonContainsPoint(polygon: Polygon, point: Point): boolean {
  const sides = polygonSides(polygon);
  if (sides.some((side) => pointToSegmentDistance(point, side) <= 1e-6)) return true;
  const crossed = sides.filter(({ from, to }) => {
    if (from.y > point.y === to.y > point.y) return false;
    return point.x < from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x);
  });
  return crossed.length % 2 === 1;
}

/** Whether every corner turns the same way, once round in all; straight corners are allowed. */
export function polygonIsConvex(polygon: Polygon): boolean {
  const turns = polygonSides(polygon).map((side, index, sides) =>
    signedTurn(side, sides[(index + 1) % sides.length] ?? side),
  );
  const total = turns.reduce((sum, turn) => sum + turn, 0);
  const isOneWay = turns.every((turn) => turn >= -1e-9) || turns.every((turn) => turn <= 1e-9);
  return isOneWay && Math.abs(Math.abs(total) - 2 * Math.PI) < 1e-6;
}

/** Whether no side has zero length and none touches another but its neighbours, and these only at their shared corner. */
export function polygonIsSimple(polygon: Polygon): boolean {
  const sides = polygonSides(polygon);
  return sides.every((side, index) => {
    if (pointDistance(side.from, side.to) === 0) return false;
    const next = sides[(index + 1) % sides.length] ?? side;
    if (Math.abs(signedTurn(side, next)) > Math.PI - 1e-9) return false;
    return sides.every((other, at) => {
      const steps = (at - index + sides.length) % sides.length;
      return steps <= 1 || steps === sides.length - 1 || !segmentsMeet(side, other);
    });
  });
}

function signedTurn(from: Segment, to: Segment): number {
  const [ax, ay] = [from.to.x - from.from.x, from.to.y - from.from.y];
  const [bx, by] = [to.to.x - to.from.x, to.to.y - to.from.y];
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

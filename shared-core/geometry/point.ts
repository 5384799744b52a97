/** A point of the plane, in 1/320 mm, not rounded. y may run up or down; only the sign of an area depends on it. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export function pointDistance(first: Point, second: Point): number {
  return Math.hypot(second.x - first.x, second.y - first.y);
}

export function pointMidway(first: Point, second: Point): Point {
  return { x: (first.x + second.x) / 2, y: (first.y + second.y) / 2 };
}

export function pointMove(point: Point, by: Point): Point {
  return { x: point.x + by.x, y: point.y + by.y };
}

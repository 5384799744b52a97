/** A point of the plane, in 1/320 mm as a double; y may run up or down, nothing here depends on it but the sign of areas. */
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

/** Turned about the origin by `radians` (from the x axis towards the y axis). */
export function pointRotate(point: Point, radians: number): Point {
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return { x: point.x * cos - point.y * sin, y: point.x * sin + point.y * cos };
}

export function pointMove(point: Point, by: Point): Point {
  return { x: point.x + by.x, y: point.y + by.y };
}

import type { Point } from '#core/geometry/point';

/** The point turned around the origin by `radians`, from the x axis toward the y axis. */
export function rotatePoint(point: Point, radians: number): Point {
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return { x: point.x * cos - point.y * sin, y: point.x * sin + point.y * cos };
}

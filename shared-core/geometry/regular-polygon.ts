import type { Point } from './point';
import type { Polygon } from './polygon';

/** A regular polygon by how many sides it has and how long one is. */
export interface RegularPolygon {
  readonly sides: number;
  readonly side: number;
}

/** From the radius of the circle through its corners. Throws RangeError unless `sides` is whole and at least 3, as all here do. */
export function regularPolygonFromCircumradius(sides: number, radius: number): RegularPolygon {
  return checked(sides, 2 * radius * Math.sin(Math.PI / sides));
}

/** From the radius of the circle that touches its sides, which is half the distance across flats where `sides` is even. */
export function regularPolygonFromInradius(sides: number, radius: number): RegularPolygon {
  return checked(sides, 2 * radius * Math.tan(Math.PI / sides));
}

export function regularPolygonInradius({ sides, side }: RegularPolygon): number {
  return side / (2 * Math.tan(Math.PI / sides));
}

export function regularPolygonCircumradius({ sides, side }: RegularPolygon): number {
  return side / (2 * Math.sin(Math.PI / sides));
}

export function regularPolygonPerimeter({ sides, side }: RegularPolygon): number {
  return sides * side;
}

export function regularPolygonArea(shape: RegularPolygon): number {
  return (regularPolygonPerimeter(shape) * regularPolygonInradius(shape)) / 2;
}

/** Corners about `center`, counterclockwise (y up), the first at `startRadians` from the x axis. */
export function regularPolygonCorners(
  shape: RegularPolygon,
  center: Point = { x: 0, y: 0 },
  startRadians = 0,
): Polygon {
  const radius = regularPolygonCircumradius(shape);
  return Array.from({ length: shape.sides }, (_, index) => {
    const angle = startRadians + (2 * Math.PI * index) / shape.sides;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

function checked(sides: number, side: number): RegularPolygon {
  if (!Number.isInteger(sides) || sides < 3) throw new RangeError(`No polygon of ${String(sides)} sides`);
  if (!(side >= 0) || !Number.isFinite(side)) throw new RangeError(`Not a side: ${String(side)}`);
  return { sides, side };
}

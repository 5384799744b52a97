import type { Point } from './point';
import type { Polygon } from './polygon';

/** A regular polygon, given by the number of its sides and the length of one. */
export interface RegularPolygon {
  readonly sides: number;
  readonly side: number;
}

/**
 * From the radius of the circle that touches its sides: half the distance across the flats where `sides` is even. Throws
 * RangeError unless `sides` is whole and at least 3 and the radius is not negative.
 */
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

/** Corners around `center`, counterclockwise with y up, clockwise with y down; the first is at `startRadians` from the x axis. */
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

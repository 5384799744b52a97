/** The circumference. Throws RangeError for a negative radius, as does `circleArea`. */
export function circlePerimeter(radius: number): number {
  assertRadius(radius);
  return 2 * Math.PI * radius;
}

export function circleArea(radius: number): number {
  assertRadius(radius);
  return Math.PI * radius * radius;
}

function assertRadius(radius: number): void {
  if (!(radius >= 0) || !Number.isFinite(radius)) throw new RangeError(`Not a radius: ${String(radius)}`);
}

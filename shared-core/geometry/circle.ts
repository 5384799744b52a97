/** Circumference, or the arc over `radians` of it. Throws RangeError for a negative radius, as all here do. */
export function circleArcLength(radius: number, radians = 2 * Math.PI): number {
  assertRadius(radius);
  return radius * Math.abs(radians);
}

export function circleArea(radius: number): number {
  assertRadius(radius);
  return Math.PI * radius * radius;
}

/** The straight line under an arc of `radians`, which may be up to a full turn (chord 0). */
export function circleChord(radius: number, radians: number): number {
  assertRadius(radius);
  return 2 * radius * Math.abs(Math.sin(radians / 2));
}

/** Depth of the arc over a chord: how far a straight edge misses the curve. Throws RangeError if the chord is too long. */
export function circleSagitta(radius: number, chord: number): number {
  assertRadius(radius);
  const half = chord / 2;
  if (!(half >= 0 && half <= radius))
    throw new RangeError(`No chord of ${String(chord)} in a circle of radius ${String(radius)}`);
  return (half * half) / (radius + Math.sqrt((radius - half) * (radius + half)));
}

function assertRadius(radius: number): void {
  if (!(radius >= 0) || !Number.isFinite(radius)) throw new RangeError(`Not a radius: ${String(radius)}`);
}

import { expect } from 'vitest';
import { centerFind } from '#core/calculators/center/center-find/center-find';
import type { Found } from '#core/calculators/center/center-find/found';
import type { Measured } from '#core/calculators/center/center-find/input';
import type { Calculation, Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { type Point, pointDistance } from '#core/geometry/point';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';

/** What the center calculator says of a measured piece, with a tape that is right to 1/8 in. */
const ACCURACY = lengthFromInches(1 / 8);

export function centerOf(measured: Measured): Calculation<Found> {
  const result = centerFind.calculate({ measured, accuracy: ACCURACY });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
}

export function foundCenter(measured: Measured): Found {
  return centerOf(measured).details;
}

export function notesOfCenter(measured: Measured): readonly Note[] {
  return centerOf(measured).notes;
}

export function refusalOfCenter(measured: Measured): Refusal | null {
  const result = centerFind.calculate({ measured, accuracy: ACCURACY });
  return result.ok ? null : result.error;
}

/** From the named points of a way, in their order, to a true center; points in inches. */
export function expectArcs({ arcs }: Found, center: Point, points: readonly Point[], within = 1e-3): void {
  expect(arcs).toHaveLength(points.length);
  points.forEach((point, index) => {
    const distance = (arcs[index]?.distance ?? NaN) / UNITS_PER_INCH;
    expect(Math.abs(distance - pointDistance(point, center))).toBeLessThan(within);
  });
}

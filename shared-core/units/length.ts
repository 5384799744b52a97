import { roundTo, type RoundingDirection } from './rounding';

declare const lengthBrand: unique symbol;

/** A length as a whole number of 1/320 mm, the largest unit in which 1/64 in and 0.1 mm are both whole. */
export type Length = number & { readonly [lengthBrand]: 'Length' };

export const UNITS_PER_MILLIMETER = 320;
export const UNITS_PER_INCH = 8_128;
export const UNITS_PER_YARD = 36 * UNITS_PER_INCH;
export const UNITS_PER_METER = 1_000 * UNITS_PER_MILLIMETER;

/** One kilometer: more fabric or seam than this is a typing error. Times any width up to 88 m it is still an exact area. */
export const KILOMETER_UNITS = 1_000 * UNITS_PER_METER;

/** Ten kilometers: two of the largest cones of thread. */
export const MAX_LENGTH_UNITS = 10 * KILOMETER_UNITS;

/** The only function that makes a Length. Throws RangeError unless `units` is whole and within ±10 km. */
export function lengthFromUnits(units: number): Length {
  if (!Number.isInteger(units) || Math.abs(units) > MAX_LENGTH_UNITS) {
    throw new RangeError(`Not a length in whole units within 10 km: ${String(units)}`);
  }
  return (units === 0 ? 0 : units) as Length;
}

export const LENGTH_ZERO: Length = lengthFromUnits(0);

/** Rounds a computed number of units to a whole multiple of `step` units in the given direction. */
export function lengthFromExact(units: number, direction: RoundingDirection, step = 1): Length {
  return lengthFromUnits(roundTo(units, step, direction));
}

/** Inches to units, to the nearest unit (1/8128 in): exact for every fraction down to 1/64. */
export function lengthFromInches(inches: number): Length {
  return lengthFromExact(inches * UNITS_PER_INCH, 'nearest');
}

/** Millimeters to units, to the nearest unit: exact for tenths of a millimeter. */
export function lengthFromMillimeters(millimeters: number): Length {
  return lengthFromExact(millimeters * UNITS_PER_MILLIMETER, 'nearest');
}

/** Meters to units, to the nearest unit; mostly for the limits of fields. */
export function lengthFromMeters(meters: number): Length {
  return lengthFromExact(meters * UNITS_PER_METER, 'nearest');
}

export function lengthInInches(length: Length): number {
  return length / UNITS_PER_INCH;
}

export function lengthInMillimeters(length: Length): number {
  return length / UNITS_PER_MILLIMETER;
}

/** The sum; throws RangeError beyond ±10 km. A list of any size is added as `lengthAdd(LENGTH_ZERO, ...list)`. */
export function lengthAdd(first: Length, ...more: readonly Length[]): Length {
  return lengthFromUnits(more.reduce<number>((sum, length) => sum + length, first));
}

/** May be negative. */
export function lengthSubtract(from: Length, taken: Length): Length {
  return lengthFromUnits(from - taken);
}

/** `times` must be whole; throws RangeError otherwise. */
export function lengthTimes(length: Length, times: number): Length {
  if (!Number.isInteger(times)) throw new RangeError(`Not a whole multiple: ${String(times)}`);
  return lengthFromUnits(length * times);
}

export function lengthMinimum(first: Length, ...more: readonly Length[]): Length {
  return lengthFromUnits(Math.min(first, ...more));
}

export function lengthMaximum(first: Length, ...more: readonly Length[]): Length {
  return lengthFromUnits(Math.max(first, ...more));
}

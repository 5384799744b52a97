import { decimalText } from './decimal-text';
import { roundDownTo, roundNearest, roundTo, type RoundingDirection } from './rounding';
import type { UnitSystem } from './unit-system';

/** An avoirdupois ounce, exactly; sixteen are a pound. */
export const GRAMS_PER_OUNCE = 28.349523125;
export const GRAMS_PER_POUND = 16 * GRAMS_PER_OUNCE;

/**
 * `14 oz`, `2 lb 3 oz`; `950 g`, and from one kilogram up `1.25 kg`. Rounded to a whole ounce or gram, or to 10 g, in the given
 * direction. Throws RangeError unless finite and not below zero.
 */
export function formatWeight(grams: number, system: UnitSystem, rounding: RoundingDirection): string {
  if (!(grams >= 0)) throw new RangeError(`Not a weight: ${String(grams)}`);
  return system === 'inch' ? poundsAndOunces(grams, rounding) : metricWeight(grams, rounding);
}

/** A computed weight before rounding: `31.81 oz` or `901.8 g`. */
export function formatExactWeight(grams: number, system: UnitSystem): string {
  return system === 'inch' ? `${decimalText(grams / GRAMS_PER_OUNCE, 2)} oz` : `${decimalText(grams, 1)} g`;
}

/**
 * As in a field, to be read back unchanged: `2 lb 3.5 oz` where that is the weight to a thousandth of a gram, else `300 g`.
 * Throws RangeError unless finite.
 */
export function formatWeightForEditing(grams: number, system: UnitSystem): string {
  const ounces = roundNearest(grams / GRAMS_PER_OUNCE, 0.01);
  const isInOunces = Math.abs(ounces * GRAMS_PER_OUNCE - grams) < 0.0005;
  if (system === 'metric' || !isInOunces) return `${decimalText(grams, 3)} g`;
  const pounds = roundDownTo(ounces, 16) / 16;
  const rest = `${decimalText(ounces - 16 * pounds, 2)} oz`;
  if (pounds === 0) return rest;
  const whole = `${decimalText(pounds, 0)} lb`;
  return ounces === 16 * pounds ? whole : `${whole} ${rest}`;
}

function poundsAndOunces(grams: number, rounding: RoundingDirection): string {
  const all = roundTo(grams / GRAMS_PER_OUNCE, 1, rounding);
  const ounces = all % 16;
  const pounds = (all - ounces) / 16;
  if (pounds === 0) return `${decimalText(ounces, 0)} oz`;
  return ounces === 0
    ? `${decimalText(pounds, 0)} lb`
    : `${decimalText(pounds, 0)} lb ${decimalText(ounces, 0)} oz`;
}

function metricWeight(grams: number, rounding: RoundingDirection): string {
  const whole = roundTo(grams, 1, rounding);
  return whole < 1_000
    ? `${decimalText(whole, 0)} g`
    : `${decimalText(roundTo(grams, 10, rounding) / 1_000, 2)} kg`;
}

import { type Length, UNITS_PER_YARD, lengthFromUnits, lengthFromMeters } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';

/** The length a shop prices fabric by: a yard or a meter. */
export function shopUnit({ system }: LengthDisplay): { readonly length: Length; readonly word: string } {
  return system === 'inch'
    ? { length: lengthFromUnits(UNITS_PER_YARD), word: 'yard' }
    : { length: lengthFromMeters(1), word: 'meter' };
}

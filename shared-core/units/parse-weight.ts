import { failure, type Result, success } from '#core/result';
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND } from './format-weight';
import { roundNearest } from './rounding';
import { readTypedNumber, type TypedNumber } from './typed-number';
import { clipRead, MAX_TYPED_CHARACTERS, normaliseTyped } from './typed-text';
import type { UnitSystem } from './unit-system';

export interface WeightProblem {
  readonly code: 'empty' | 'not-a-weight' | 'ambiguous';
  readonly read: string;
  /** Texts that would have been taken. */
  readonly expected: readonly string[];
}

const EXPECTED: Readonly<Record<UnitSystem, readonly string[]>> = {
  inch: ['6 oz', '1 lb 2 oz', '300 g'],
  metric: ['300 g', '1.2 kg', '6 oz'],
};

const POUND = /^ ?(?:pounds?|lbs?)\.? ?/;
const OUNCE = /^ ?(?:ounces?|oz)\.?$/;
const UNITS: readonly (readonly [RegExp, number])[] = [
  [/^ ?(?:pounds?|lbs?)\.?$/, GRAMS_PER_POUND],
  [OUNCE, GRAMS_PER_OUNCE],
  [/^ ?(?:grams?|g)$/, 1],
  [/^ ?(?:kilograms?|kilos?|kg)$/, 1_000],
];

/**
 * Reads `6 oz`, `1 1/2 lb`, `1 lb 2 oz`, `300 g` and `1.2 kg` as grams, to the nearest thousandth. A number without a unit is in
 * ounces or grams, by the system.
 */
export function parseWeight(text: string, system: UnitSystem): Result<number, WeightProblem> {
  const problem = (code: WeightProblem['code'], expected = EXPECTED[system]) =>
    failure({ code, read: clipRead(text), expected });
  if (text.length > MAX_TYPED_CHARACTERS) return problem('not-a-weight');
  const typed = normaliseTyped(text);
  if (typed === '') return problem('empty');
  const number = readTypedNumber(typed);
  if (!number.ok) {
    return number.error.code === 'ambiguous'
      ? problem('ambiguous', number.error.readings)
      : problem('not-a-weight');
  }
  const grams = gramsOfTyped(number.value, system);
  return grams === null ? problem('not-a-weight') : success(roundNearest(grams, 0.001));
}

function gramsOfTyped({ amount, rest }: TypedNumber, system: UnitSystem): number | null {
  const value = Number(amount.numerator) / Number(amount.denominator);
  if (rest === '') return value * (system === 'inch' ? GRAMS_PER_OUNCE : 1);
  const unit = UNITS.find(([words]) => words.test(rest))?.[1];
  if (unit !== undefined) return value * unit;
  const pounds = POUND.exec(rest)?.[0];
  const ounces = pounds === undefined ? null : readTypedNumber(rest.slice(pounds.length));
  if (ounces?.ok !== true || !OUNCE.test(ounces.value.rest)) return null;
  const { numerator, denominator } = ounces.value.amount;
  return value * GRAMS_PER_POUND + (Number(numerator) / Number(denominator)) * GRAMS_PER_OUNCE;
}

import { type Length, lengthFromExact } from '#core/units/length';
import { roundTo, type RoundingDirection } from '#core/units/rounding';
import type { LengthQuantity, Quantity } from './explanation';

type OfKind<Kind extends Quantity['kind']> = Extract<Quantity, { kind: Kind }>;

interface LengthRounding {
  /** In 1/320 mm; the default is one unit. */
  readonly step?: number;
  readonly direction: RoundingDirection;
  readonly use?: LengthQuantity['use'];
}

/** A computed length together with its rounded value. Throws RangeError unless finite and within 10 km. */
export function lengthQuantity(
  exact: number,
  { step = 1, direction, use = 'size' }: LengthRounding,
): LengthQuantity {
  return {
    kind: 'length',
    exact,
    rounded: lengthFromExact(exact, direction, step),
    rounding: direction,
    use,
    ...(step === 1 ? {} : { step }),
  };
}

/** Rounded up, to a whole multiple of `step` units where one is given: for what must not be too small. */
export function lengthUp(exact: number, step = 1): LengthQuantity {
  return lengthQuantity(exact, { direction: 'up', step });
}

/** Rounded down: for what must not be too large. */
export function lengthDown(exact: number, step = 1): LengthQuantity {
  return lengthQuantity(exact, { direction: 'down', step });
}

/** Rounded to the nearest: for what is only shown, and where neither direction is safer. */
export function lengthNearest(exact: number, step = 1): LengthQuantity {
  return lengthQuantity(exact, { direction: 'nearest', step });
}

/** A small difference or an exact mark, always shown to 1/64 in or 0.1 mm. */
export function fineLength(exact: number, direction: RoundingDirection): LengthQuantity {
  return lengthQuantity(exact, { direction, use: 'fine' });
}

/** Fabric to buy, rounded up to a whole multiple of `step` units. */
export function yardageUp(exact: number, step = 1): LengthQuantity {
  return lengthQuantity(exact, { direction: 'up', use: 'yardage', step });
}

/** A length that was entered or is whole already, so nothing is rounded. */
export function givenLength(length: Length, use: LengthQuantity['use'] = 'size'): LengthQuantity {
  return { kind: 'length', exact: length, rounded: length, rounding: 'none', use };
}

/** A rectangle, width first. */
export function sizeQuantity(width: LengthQuantity, length: LengthQuantity): OfKind<'size'> {
  return { kind: 'size', width, length };
}

/** Whole things, rounded in the given direction; `of` holds the singular and the plural. */
export function countQuantity(
  exact: number,
  of: readonly [string, string],
  direction: RoundingDirection = 'nearest',
): OfKind<'count'> {
  return { kind: 'count', exact, rounded: roundTo(exact, 1, direction), of };
}

/** (1/320 mm)². */
export function areaQuantity(exact: number): OfKind<'area'> {
  return { kind: 'area', exact };
}

/** 5 means 5%. */
export function percentQuantity(exact: number): OfKind<'percent'> {
  return { kind: 'percent', exact };
}

/** An amount in minor units, rounded once; by default to the nearest, halves away from zero. */
export function moneyQuantity(exact: number, direction: RoundingDirection = 'nearest'): OfKind<'money'> {
  return { kind: 'money', exact, rounded: roundTo(exact, 1, direction) };
}

/** Working time; by default rounded up to the next whole minute. */
export function minutesQuantity(exact: number, direction: RoundingDirection = 'up'): OfKind<'minutes'> {
  return { kind: 'minutes', exact, rounded: roundTo(exact, 1, direction) };
}

/** Grams; by default rounded up, for a package has to be paid for by what it weighs. */
export function weightQuantity(exact: number, rounding: RoundingDirection = 'up'): OfKind<'weight'> {
  return { kind: 'weight', exact, rounding };
}

export function degreesQuantity(exact: number): OfKind<'degrees'> {
  return { kind: 'degrees', exact };
}

/** A plain number, a factor or ratio. */
export function numberQuantity(exact: number): OfKind<'number'> {
  return { kind: 'number', exact };
}

/** A verdict in words. */
export function wordsQuantity(text: string): OfKind<'words'> {
  return { kind: 'words', text };
}

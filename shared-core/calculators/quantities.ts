import { type Length, lengthFromExact } from '#core/units/length';
import { roundTo, type RoundingDirection } from '#core/units/rounding';
import type { LengthQuantity, Quantity } from './explanation';

type OfKind<Kind extends Quantity['kind']> = Extract<Quantity, { kind: Kind }>;

interface LengthRounding {
  /** In 1/320 mm; one unit unless said otherwise. */
  readonly step?: number;
  readonly direction: RoundingDirection;
  readonly use?: 'size' | 'yardage';
}

/** A computed length with its rounded value beside it. Throws RangeError unless finite and within 1 km. */
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
  };
}

/** A length that was put in or is whole already: nothing is rounded. */
export function givenLength(length: Length, use: 'size' | 'yardage' = 'size'): LengthQuantity {
  return { kind: 'length', exact: length, rounded: length, rounding: 'none', use };
}

/** A rectangle, width first. */
export function sizeQuantity(width: LengthQuantity, length: LengthQuantity): OfKind<'size'> {
  return { kind: 'size', width, length };
}

/** Whole things, rounded in the named direction; `of` names one and several. */
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

/** 5 is five in a hundred. */
export function percentQuantity(exact: number): OfKind<'percent'> {
  return { kind: 'percent', exact };
}

/** An amount in minor units, rounded once, half away from zero unless said otherwise. */
export function moneyQuantity(exact: number, direction: RoundingDirection = 'nearest'): OfKind<'money'> {
  return { kind: 'money', exact, rounded: roundTo(exact, 1, direction) };
}

/** Working time, up to the next whole minute unless said otherwise. */
export function minutesQuantity(exact: number, direction: RoundingDirection = 'up'): OfKind<'minutes'> {
  return { kind: 'minutes', exact, rounded: roundTo(exact, 1, direction) };
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

import type { Outline } from '#core/domain/outline';
import type { Length } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import type { LengthQuantity } from '../explanation';
import { lengthNearest, lengthUp } from '../quantities';
import type { WashingInput } from './input';

/** Width or length: what it washes to, and how large to make quilt and top so that it ends at the wanted size. */
export interface SideSizes {
  /** Shrinkage in the wash; negative when the fabric grew. */
  readonly percent: number;
  readonly wanted: Length;
  readonly washed: LengthQuantity;
  readonly make: LengthQuantity;
  readonly top: LengthQuantity;
}

export function washedSizes(input: WashingInput): { readonly width: SideSizes; readonly length: SideSizes } {
  const { width, length } = input.wish ?? input;
  return {
    width: sideSizes(input, width, shrinkagePercent(input, 'across')),
    length: sideSizes(input, length, shrinkagePercent(input, 'along')),
  };
}

/** The outline to make so that it washes to the wished one: a circle that shrinks unevenly is made as an oval. Null without a wish. */
export function outlineToMake({ wish }: WashingInput, width: Length, length: Length): Outline | null {
  if (wish === null) return null;
  if (wish.shape === 'round') {
    return width === length ? { shape: 'circle', diameter: width } : { shape: 'ellipse', width, length };
  }
  return width === length ? { shape: 'square', side: width } : { shape: 'rectangle', width, length };
}

/** As a setting holds it: to a hundredth of a percent, and 0 for fabric that grew. */
export function settingPercent(percent: number): number {
  return Math.max(0, roundNearest(percent, 0.01));
}

/** Percent lost: 100 × (before − after) ÷ before. The standard's dimensional change has the opposite sign. */
export function shrinkagePercent(input: WashingInput, direction: 'across' | 'along'): number {
  if (input.sample === null) return direction === 'across' ? input.acrossPercent : input.alongPercent;
  return (100 * (input.sample.marked - input.sample[direction])) / input.sample.marked;
}

function sideSizes({ quiltingPercent, cutStep }: WashingInput, wanted: Length, percent: number): SideSizes {
  const make = lengthUp(wanted / (1 - percent / 100), cutStep);
  const washed = lengthNearest(wanted * (1 - percent / 100), cutStep);
  const top = lengthUp(make.rounded / (1 - quiltingPercent / 100), cutStep);
  return { percent, wanted, washed, make, top };
}

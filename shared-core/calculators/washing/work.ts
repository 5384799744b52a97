import type { Length } from '#core/units/length';
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
  return {
    width: sideSizes(input, input.width, shrinkagePercent(input, 'across')),
    length: sideSizes(input, input.length, shrinkagePercent(input, 'along')),
  };
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

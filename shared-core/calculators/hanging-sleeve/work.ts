import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { stripsNeeded } from '../binding/strip-joins';
import type { Refusal } from '../calculator';
import type { LengthQuantity } from '../explanation';
import { outlineBounds } from '../outline/outline-measures';
import { givenLength, lengthDown, lengthUp } from '../quantities';
import type { HangingSleeveInput } from './input';
import { widthAt } from './width-at';

/** Lengths in 1/320 mm; doubles where they are not rounded. */
export interface HangingSleeveDetails {
  /** Of the quilt, at the top of the sleeve. */
  readonly width: number;
  /** From the left end of the first sleeve to the right end of the last. */
  readonly span: number;
  /** Of one sleeve, finished. */
  readonly length: number;
  readonly cutDepth: Length;
  readonly cutLength: Length;
  /** From one line of sewing on the back to the other. */
  readonly sewnApart: number;
  readonly rod: number;
  /** All sleeves, cut from strips across the fabric that are joined where one is too short. */
  readonly needed: number;
  readonly strips: number;
  readonly fabric: number;
  readonly fabricToBuy: Length;
}

/** More strips than this are a slip in the input. */
const MOST_STRIPS = 500;

export function planHangingSleeve(input: HangingSleeveInput): Result<HangingSleeveDetails, Refusal> {
  const { outline, down, depth, sideGap, sleeves, gap } = input;
  if (down + depth > outlineBounds(outline).length / 2) return failure(tooLow(input));
  const width = widthAt(outline, down);
  const span = width - 2 * sideGap;
  const length = (span - (sleeves - 1) * gap) / sleeves;
  if (length <= input.cutStep) return failure(noLengthLeft(input, width));
  if (input.ease >= 2 * depth) return failure(tooMuchEase(input));
  const cutDepth = lengthUp(2 * depth + 2 * input.seamAllowance, input.cutStep).rounded;
  const cutLength = cutLengthOf(input, length).rounded;
  const needed = sleeves * cutLength;
  const strips = stripsNeeded(needed, input.fabricWidth, seamsOf(input));
  if (strips === null || strips > MOST_STRIPS) return failure(fabricTooNarrow(input));
  const fabric = strips * cutDepth;
  return success({
    width,
    span,
    length,
    cutDepth,
    cutLength,
    sewnApart: depth - input.ease / 2,
    rod: span + input.rodExtra,
    needed,
    strips,
    fabric,
    fabricToBuy: fabricToBuy(input, fabric).rounded,
  });
}

/** Rounded down, since a sleeve must not show beside the quilt. */
export function cutLengthOf({ hem, cutStep }: HangingSleeveInput, length: number): LengthQuantity {
  return lengthDown(length + 2 * hem, cutStep);
}

/** What a straight join between two strips takes. */
export function seamsOf({ seamAllowance }: HangingSleeveInput): number {
  return 2 * seamAllowance;
}

function tooLow({ outline, down, depth }: HangingSleeveInput): Refusal {
  return {
    code: 'sleeve-too-low',
    field: ['down'],
    says: 'A sleeve {depth} deep that begins {down} below the top is not in the upper half of a quilt {length} long, so the quilt would tip over.',
    values: {
      depth: givenLength(depth),
      down: givenLength(down),
      length: lengthDown(outlineBounds(outline).length),
    },
  };
}

function noLengthLeft({ down, sideGap }: HangingSleeveInput, width: number): Refusal {
  return {
    code: 'no-length-left',
    field: ['sideGap'],
    says: 'The quilt is {width} wide {down} below its top edge. Gaps of {gap} at the sides leave no length for the sleeve: make the gaps smaller or place it lower.',
    values: { width: lengthDown(width), down: givenLength(down), gap: givenLength(sideGap) },
  };
}

function tooMuchEase({ ease, depth }: HangingSleeveInput): Refusal {
  return {
    code: 'too-much-ease',
    field: ['ease'],
    says: 'An ease of {ease} takes all the fabric behind the rod of a sleeve {depth} deep.',
    values: { ease: givenLength(ease), depth: givenLength(depth) },
  };
}

function fabricTooNarrow({ fabricWidth }: HangingSleeveInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['fabricWidth'],
    says: 'Strips across fabric {width} wide add almost nothing: each join takes as much as a strip adds.',
    values: { width: givenLength(fabricWidth) },
  };
}

import { type Length, lengthFromExact } from '#core/units/length';
import { roundDownTo, roundUpTo } from '#core/units/rounding';
import type { LengthQuantity } from '../explanation';
import { givenLength, lengthUp } from '../quantities';
import type { CutEdge } from './cut-edge';
import { type AlongStrip, patchesPerStrip } from './fill-strips';
import type { CutPatch } from './patch-unit';

export interface CutChoice {
  readonly rounding: 'customary' | 'exact';
  readonly cutStep: Length;
  /** Cut sizes that the maker entered: they are kept as they are. */
  readonly entered?: readonly number[];
}

/** A patch with the sizes for the ruler and its count. */
export interface SizedPatch {
  readonly patch: CutPatch;
  readonly across: LengthQuantity;
  readonly along: LengthQuantity;
  readonly count: number;
  readonly strip: AlongStrip;
}

/**
 * Rounded up to the step, from the customary size if it is wanted and there is one, and never smaller than the exact size. A side
 * that was entered as cut gets nothing added. It is found again by its size, within what doubles lose on the way.
 */
function cutLength(edge: CutEdge, { rounding, cutStep, entered = [] }: CutChoice): LengthQuantity {
  const asEntered = entered.find((size) => Math.abs(size - edge.exact) < 1e-3);
  if (asEntered !== undefined) return givenLength(lengthFromExact(asEntered, 'nearest'));
  const customary = rounding === 'customary' ? (edge.customary?.exact ?? 0) : 0;
  const { rounded } = lengthUp(Math.max(customary, edge.exact), cutStep);
  return { kind: 'length', exact: edge.exact, rounded, rounding: 'up', use: 'size', step: cutStep };
}

/** The patches for `units` units, in whole batches: half a pair of squares makes nothing. */
export function sizedPatch(patch: CutPatch, units: number, choice: CutChoice): SizedPatch {
  const count = roundUpTo(units / patch.makes, 1) * patch.takes;
  const across = cutLength(patch.across, choice);
  const along = cutLength(patch.along, choice);
  const { first, pitch } = patch.shape.isRectangle
    ? { first: along.rounded, pitch: along.rounded }
    : grownWithStrip(patch, across.rounded);
  return { patch, across, along, count, strip: { first, pitch, count } };
}

/** A shape keeps its angles, so rounding up the strip makes it larger in both directions. */
function grownWithStrip({ shape, across }: CutPatch, strip: Length) {
  const times = strip / across.exact;
  return { first: shape.first * times, pitch: shape.pitch * times };
}

/** How many come from a piece of fabric, cut in rows in the better direction. */
export function patchesFromPiece(sized: SizedPatch, width: Length, length: Length): number {
  const rows = (depth: number) => roundDownTo(depth / sized.across.rounded, 1);
  const asIs = rows(length) * patchesPerStrip(sized.strip, width);
  const turned = rows(width) * patchesPerStrip(sized.strip, length);
  return Math.max(asIs, turned);
}

import type { Length } from '#core/units/length';
import { roundDownTo, roundUpTo } from '#core/units/rounding';
import type { LengthQuantity } from '../explanation';
import { lengthUp } from '../quantities';
import type { CutEdge } from './cut-edge';
import { type AlongStrip, piecesPerStrip } from './fill-strips';
import type { CutPatch } from './patch-unit';

export interface CutChoice {
  readonly rounding: 'customary' | 'exact';
  readonly cutStep: Length;
}

/** A patch with the sizes to set on the ruler and how many of it are needed. */
export interface SizedPatch {
  readonly patch: CutPatch;
  readonly across: LengthQuantity;
  readonly along: LengthQuantity;
  readonly count: number;
  readonly strip: AlongStrip;
}

/** Up to the step, from the setting of the trade where it is wanted and known, and never under the exact size. */
export function cutLength(edge: CutEdge, { rounding, cutStep }: CutChoice): LengthQuantity {
  const setting = rounding === 'customary' ? (edge.customary?.exact ?? 0) : 0;
  const { rounded } = lengthUp(Math.max(setting, edge.exact), cutStep);
  return { kind: 'length', exact: edge.exact, rounded, rounding: 'up', use: 'size' };
}

/** Patches for `units` units: whole batches, since half a pair of squares makes nothing. */
export function sizedPatch(patch: CutPatch, units: number, choice: CutChoice): SizedPatch {
  const count = roundUpTo(units / patch.makes, 1) * patch.takes;
  const across = cutLength(patch.across, choice);
  const along = cutLength(patch.along, choice);
  const { first, pitch } = patch.shape.isRectangle
    ? { first: along.rounded, pitch: along.rounded }
    : grownWithStrip(patch, across.rounded);
  return { patch, across, along, count, strip: { first, pitch, count } };
}

/** A shape keeps its angles, so a strip rounded up makes it larger all over. */
function grownWithStrip({ shape, across }: CutPatch, strip: Length) {
  const times = strip / across.exact;
  return { first: shape.first * times, pitch: shape.pitch * times };
}

/** From a rectangle of fabric, in rows, the better way round. */
export function piecesFromFabric(sized: SizedPatch, width: Length, length: Length): number {
  const rows = (depth: number) => roundDownTo(depth / sized.across.rounded, 1);
  const upright = rows(length) * piecesPerStrip(sized.strip, width);
  const turned = rows(width) * piecesPerStrip(sized.strip, length);
  return Math.max(upright, turned);
}

import { roundDownTo, roundUpTo } from '#core/units/rounding';

/** Patches of one length to cut along strips. The first in a strip takes `first`, each one after it `pitch`. */
export interface AlongStrip {
  readonly first: number;
  readonly pitch: number;
  readonly count: number;
}

/** How many come from one strip, rounded down; 0 if the strip is too short for one. */
export function patchesPerStrip({ first, pitch }: Omit<AlongStrip, 'count'>, strip: number): number {
  return first > strip ? 0 : 1 + roundDownTo((strip - first) / pitch, 1);
}

/**
 * Number of strips of length `strip` for all patches. Each strip is filled with the longest patches that still fit, and the same
 * filling is repeated as long as there are enough. Never too few; null if a patch is longer than the strip.
 */
export function stripsToCut(patches: readonly AlongStrip[], strip: number): number | null {
  const kinds = [...patches].sort((one, other) => other.first - one.first);
  if (kinds.some((kind) => kind.first > strip)) return null;
  const left = kinds.map((kind) => kind.count);
  let strips = 0;
  while (left.some((count) => count > 0)) {
    const filling = fillOneStrip(kinds, left, strip);
    const times = Math.min(
      ...filling.map((taken, kind) => (taken === 0 ? Infinity : roundDownTo((left[kind] ?? 0) / taken, 1))),
    );
    filling.forEach((taken, kind) => {
      left[kind] = (left[kind] ?? 0) - taken * times;
    });
    strips += times;
  }
  return strips;
}

function fillOneStrip(
  kinds: readonly AlongStrip[],
  left: readonly number[],
  strip: number,
): readonly number[] {
  let space = strip;
  return kinds.map((kind, index) => {
    const taken = Math.min(left[index] ?? 0, patchesPerStrip(kind, space));
    if (taken > 0) space -= kind.first + (taken - 1) * kind.pitch;
    return taken;
  });
}

/**
 * Number of strips to join end to end with straight seams, so that all patches can be cut from the long strip one after the other.
 * Null if the seams take the whole strip.
 */
export function stripsToJoin(patches: readonly AlongStrip[], strip: number, seam: number): number | null {
  const gain = strip - 2 * seam;
  if (gain <= 0) return null;
  const needed = patches.reduce((sum, { first, count }) => sum + first * count, 0);
  return Math.max(1, roundUpTo((needed - 2 * seam) / gain, 1));
}

import { roundDownTo, roundUpTo } from '#core/units/rounding';

/** Pieces of one length to be cut along strips. The first in a strip takes `first`, each further one `pitch`. */
export interface AlongStrip {
  readonly first: number;
  readonly pitch: number;
  readonly count: number;
}

/** How many of one kind come from one strip, rounded down; 0 when the strip is too short for the first. */
export function piecesPerStrip({ first, pitch }: Omit<AlongStrip, 'count'>, strip: number): number {
  return first > strip ? 0 : 1 + roundDownTo((strip - first) / pitch, 1);
}

/**
 * Number of strips of length `strip` that give all pieces: each strip is filled with the longest that still fit, and the
 * same filling repeated while it lasts. Never fewer than are needed; null when a piece is longer than the strip.
 */
export function stripsToCut(pieces: readonly AlongStrip[], strip: number): number | null {
  const kinds = [...pieces].sort((one, other) => other.first - one.first);
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
    const taken = Math.min(left[index] ?? 0, piecesPerStrip(kind, space));
    if (taken > 0) space -= kind.first + (taken - 1) * kind.pitch;
    return taken;
  });
}

/**
 * Number of strips that, joined end to end with straight seams into one, give all pieces cut from it one after the other.
 * Null when a strip is no longer than the seams take.
 */
export function stripsToJoin(pieces: readonly AlongStrip[], strip: number, seam: number): number | null {
  const gain = strip - 2 * seam;
  if (gain <= 0) return null;
  const needed = pieces.reduce((sum, { first, count }) => sum + first * count, 0);
  return Math.max(1, roundUpTo((needed - 2 * seam) / gain, 1));
}

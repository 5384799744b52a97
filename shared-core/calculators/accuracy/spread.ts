/** How far a sum of small errors may be off, in 1/320 mm: if all go the same way, and as a rule when they go as they fall. */
export interface Spread {
  readonly worst: number;
  readonly likely: number;
}

export interface Errors {
  /** Patches (or trimmed blocks), each off by `cutOff` at most. */
  readonly cuts: number;
  readonly cutOff: number;
  /** Seams between them; one takes up its error twice, on the left and on the right of it. */
  readonly seams: number;
  readonly seamOff: number;
}

/** Worst case n·c + m·2e; root of the sum of squares √(n·c² + m·(2e)²). */
export function spreadOf({ cuts, cutOff, seams, seamOff }: Errors): Spread {
  const perSeam = 2 * seamOff;
  return {
    worst: cuts * cutOff + seams * perSeam,
    likely: Math.sqrt(cuts * cutOff ** 2 + seams * perSeam ** 2),
  };
}

/** The seam error that keeps the worst case within `tolerance`; nothing where cutting alone uses it up, null without seams. */
export function seamOffForWorst(
  { cuts, cutOff, seams }: Omit<Errors, 'seamOff'>,
  tolerance: number,
): number | null {
  if (seams === 0) return null;
  return Math.max(0, tolerance - cuts * cutOff) / (2 * seams);
}

/** The same for the root of the sum of squares. */
export function seamOffForLikely(
  { cuts, cutOff, seams }: Omit<Errors, 'seamOff'>,
  tolerance: number,
): number | null {
  if (seams === 0) return null;
  return Math.sqrt(Math.max(0, tolerance ** 2 - cuts * cutOff ** 2) / seams) / 2;
}

/** How far a sum of small errors may be off, in 1/320 mm: `worst` if all go the same way, `likely` if they are random. */
export interface Spread {
  readonly worst: number;
  readonly likely: number;
}

export interface Errors {
  /** Number of patches or trimmed blocks, each off by at most `cutOff`. */
  readonly cuts: number;
  readonly cutOff: number;
  /** Number of seams between them. Each is off twice, on its left and on its right. */
  readonly seams: number;
  readonly seamOff: number;
}

/** The worst case is n·c + m·2e, the root of the sum of squares √(n·c² + m·(2e)²). */
export function spreadOf({ cuts, cutOff, seams, seamOff }: Errors): Spread {
  const perSeam = 2 * seamOff;
  return {
    worst: cuts * cutOff + seams * perSeam,
    likely: Math.sqrt(cuts * cutOff ** 2 + seams * perSeam ** 2),
  };
}

/** The seam error that keeps the worst case within `tolerance`: 0 if the cuts alone use it up, null if there are no seams. */
export function seamOffForWorst(
  { cuts, cutOff, seams }: Omit<Errors, 'seamOff'>,
  tolerance: number,
): number | null {
  if (seams === 0) return null;
  return Math.max(0, tolerance - cuts * cutOff) / (2 * seams);
}

/** The seam error that keeps the root of the sum of squares within `tolerance`, 0 or null as above. */
export function seamOffForLikely(
  { cuts, cutOff, seams }: Omit<Errors, 'seamOff'>,
  tolerance: number,
): number | null {
  if (seams === 0) return null;
  return Math.sqrt(Math.max(0, tolerance ** 2 - cuts * cutOff ** 2) / seams) / 2;
}

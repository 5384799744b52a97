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

/** The seam error that keeps the worst case within `tolerance`; null if there are no seams, or if the cuts alone are off by more. */
export function seamOffForWorst(
  { cuts, cutOff, seams }: Omit<Errors, 'seamOff'>,
  tolerance: number,
): number | null {
  const left = tolerance - cuts * cutOff;
  return seams === 0 || left < 0 ? null : left / (2 * seams);
}

/** The seam error that keeps the root of the sum of squares within `tolerance`, or null as above. */
export function seamOffForLikely(
  { cuts, cutOff, seams }: Omit<Errors, 'seamOff'>,
  tolerance: number,
): number | null {
  const left = tolerance ** 2 - cuts * cutOff ** 2;
  return seams === 0 || left < 0 ? null : Math.sqrt(left / seams) / 2;
}

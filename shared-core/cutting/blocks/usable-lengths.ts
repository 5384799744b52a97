/** A length that occurs `copies` times. */
export interface CountedLength {
  readonly length: number;
  readonly copies: number;
}

/**
 * For every x from 0 to `limit`, the longest sum of the given lengths that is at most x, so that fabric which no row of
 * patches can use counts as waste at once. The copies are respected only approximately: a sum may be allowed that needs too
 * many copies, but no possible sum is left out.
 */
export function usableLengths(lengths: readonly CountedLength[], limit: number): Int32Array {
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  for (const { length, copies } of lengths) {
    if (length > limit) continue;
    const used = new Int32Array(limit + 1);
    for (let x = length; x <= limit; x++) {
      if (reached[x] === 1 || reached[x - length] === 0 || used[x - length]! >= copies) continue;
      reached[x] = 1;
      used[x] = used[x - length]! + 1;
    }
  }
  const usable = new Int32Array(limit + 1);
  for (let x = 1; x <= limit; x++) usable[x] = reached[x] === 1 ? x : usable[x - 1]!;
  return usable;
}

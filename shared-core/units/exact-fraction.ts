/** A non-negative number kept exactly while text is read; `denominator` is positive and nothing is reduced. */
export interface ExactFraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/** `digits` before the mark and `decimals` after it; either may be empty. */
export function fractionFromDecimal(digits: string, decimals: string): ExactFraction {
  return { numerator: BigInt(`0${digits}${decimals}`), denominator: 10n ** BigInt(decimals.length) };
}

export function fractionAdd(first: ExactFraction, second: ExactFraction): ExactFraction {
  return {
    numerator: first.numerator * second.denominator + second.numerator * first.denominator,
    denominator: first.denominator * second.denominator,
  };
}

export function fractionTimes(fraction: ExactFraction, times: number): ExactFraction {
  return { numerator: fraction.numerator * BigInt(times), denominator: fraction.denominator };
}

/** Nearest whole number, halves up; exact however many digits there are. */
export function fractionToNearest(fraction: ExactFraction): bigint {
  return (2n * fraction.numerator + fraction.denominator) / (2n * fraction.denominator);
}

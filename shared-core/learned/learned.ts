/** The median of past cases with their lower and upper quartile. */
export interface Learned {
  readonly count: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** The number of cases needed before a learned value replaces a default. */
export const ENOUGH_CASES = 3;

/** Null without cases. Quartiles between two cases are interpolated; a single case is its own median and quartiles. */
export function learnedFrom(cases: readonly number[]): Learned | null {
  if (cases.length === 0) return null;
  const sorted = cases.toSorted((first, second) => first - second);
  return {
    count: sorted.length,
    median: quantile(sorted, 0.5),
    low: quantile(sorted, 0.25),
    high: quantile(sorted, 0.75),
  };
}

/** Whether there are enough cases to use the value. */
export function isWellLearned(learned: Learned | null): learned is Learned {
  return learned !== null && learned.count >= ENOUGH_CASES;
}

function quantile(sorted: readonly number[], share: number): number {
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const [first = 0, second = first] = sorted.slice(below, below + 2);
  return first + (second - first) * (place - below);
}

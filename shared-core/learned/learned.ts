/** What past cases teach of a quantity: its median and the middle half of the cases, from their lower to their upper quartile. */
export interface Learned {
  readonly count: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** From so many cases on, what was learned stands in place of a default. */
export const ENOUGH_CASES = 3;

/** Null without a case. Quartiles lie between two cases in proportion, so that one case is its own median and spread. */
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

/** Whether it is learned from enough cases to be used. */
export function isWellLearned(learned: Learned | null): learned is Learned {
  return learned !== null && learned.count >= ENOUGH_CASES;
}

function quantile(sorted: readonly number[], share: number): number {
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const [first = 0, second = first] = sorted.slice(below, below + 2);
  return first + (second - first) * (place - below);
}

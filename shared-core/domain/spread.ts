/**
 * How far what really happens is from what is planned, as factors: a quarter of all cases takes less than `low` times as long, a
 * quarter more than `high` times. `isLearned`: from the maker's own cases, not from what is usual.
 */
export interface Spread {
  readonly low: number;
  readonly high: number;
  readonly isLearned: boolean;
}

/** For what is certain, such as a wait of no days. */
export const NO_SPREAD: Spread = { low: 1, high: 1, isLearned: true };

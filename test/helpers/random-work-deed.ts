/** One thing a maker may do: which, to which of the things there are, and how much. */
export interface Deed {
  readonly step: number;
  readonly pick: readonly [number, number, number];
  readonly amount: number;
}

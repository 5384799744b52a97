/** One thing that a maker may do: the step, the records it is done to, and an amount. */
export interface Deed {
  readonly step: number;
  readonly pick: readonly [number, number, number];
  readonly amount: number;
}

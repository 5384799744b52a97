import type { KnownCost } from '#core/units/known-cost';

/**
 * What was bought and used in a month, and the value of the stash at its end. `month` is `2027-02`; areas are in (1/320 mm)².
 */
export interface StashMonth {
  readonly month: string;
  readonly bought: KnownCost;
  readonly boughtArea: number;
  readonly used: KnownCost;
  readonly usedArea: number;
  readonly value: KnownCost;
}

/** Leftovers with the same shorter side, in 1/320 mm; `area` is their total. */
export interface LeftoversOfSide {
  readonly side: number;
  readonly pieces: number;
  readonly area: number;
}

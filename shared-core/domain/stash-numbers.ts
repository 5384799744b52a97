/** What was bought and used in a month, and the value of the stash at its end. `month` is `2027-02`; areas are in (1/320 mm)², money in whole minor units. */
export interface StashMonth {
  readonly month: string;
  readonly boughtMinor: number;
  readonly boughtArea: number;
  readonly usedMinor: number;
  readonly usedArea: number;
  readonly valueMinor: number;
}

/** Leftovers with the same shorter side, in 1/320 mm; `area` is their total. */
export interface LeftoversOfSide {
  readonly side: number;
  readonly pieces: number;
  readonly area: number;
}

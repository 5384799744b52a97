/** What was bought and used in a month, and the value on the shelf at its end. `month` is `2027-02`; areas are (1/320 mm)², money whole minor units. */
export interface StashMonth {
  readonly month: string;
  readonly boughtMinor: number;
  readonly boughtArea: number;
  readonly usedMinor: number;
  readonly usedArea: number;
  readonly valueMinor: number;
}

/** Leftovers whose shorter side has one length, in 1/320 mm; `area` is that of all of them. */
export interface LeftoversOfSide {
  readonly side: number;
  readonly pieces: number;
  readonly area: number;
}

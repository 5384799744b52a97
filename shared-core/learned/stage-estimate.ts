import type { WorkDone } from '#core/domain/clock';
import type { Learned } from './learned';

/** Blocks, cuts or hand sewing in a stage, with the time they take at the maker's own rate. */
export interface EstimatePart extends WorkDone {
  /** Null while nothing is counted. */
  readonly learned: Learned | null;
  /** Whole minutes; null until the rate is in use. */
  readonly minutes: number | null;
}

/** How long a stage will take, and where that figure comes from. */
export interface StageEstimate {
  readonly minutes: number;
  /** rates: the maker's own rates; own: hours the maker set for this stage; plan: hours from the stage plan. */
  readonly from: 'rates' | 'own' | 'plan';
  /** The estimate stored with the stage, used when the rates give none. */
  readonly storedMinutes: number;
  /** Rounded up to five minutes; null when the rates give no estimate. */
  readonly ratesMinutes: number | null;
  /** The work that can be counted. */
  readonly parts: readonly EstimatePart[];
}

import type { WorkDone } from '#core/domain/clock';
import type { Learned } from './learned';

/** So many blocks, cuts, or so much by hand in a stage, and what the maker's own rate says of it. */
export interface EstimatePart extends WorkDone {
  /** Null where nothing was counted yet. */
  readonly learned: Learned | null;
  /** Whole ones; null as long as the rate is not in use. */
  readonly minutes: number | null;
}

/** How long a stage will take, and what that comes from. */
export interface StageEstimate {
  readonly minutes: number;
  /** rates: the maker's own; own: hours she set for this stage herself; plan: those the stage began with. */
  readonly from: 'rates' | 'own' | 'plan';
  /** What stands with the stage: it holds where the rates do not. */
  readonly saidMinutes: number;
  /** Up to five minutes; null where the rates do not tell. */
  readonly ratesMinutes: number | null;
  /** What there is to do, as far as it is known. */
  readonly parts: readonly EstimatePart[];
}

import type { CuttingJob } from '#core/cutting/tree/cutting-job';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';

/** What the page asks of the planning worker. A new plan takes the place of the one under way at once. */
export type PlanningOrder =
  | {
      readonly order: 'plan';
      /** Names the search; news of an earlier one is out of date. */
      readonly search: number;
      readonly job: CuttingJob;
      readonly milliseconds: number;
    }
  | { readonly order: 'search-on'; readonly milliseconds: number }
  | { readonly order: 'stop' };

/** Sent at the start, whenever a plan got better, and when the search comes to rest. */
export interface PlanningNews {
  readonly search: number;
  /** Null before every fabric has its first plan. */
  readonly answer: JobAnswer | null;
  /** `searching`; `rested`: the time allowed is over, or it was stopped; `exhausted`: there is nothing left to try. */
  readonly state: 'searching' | 'rested' | 'exhausted';
  /** Time spent searching so far. */
  readonly milliseconds: number;
}

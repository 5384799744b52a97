import type { CuttingJob } from '#core/cutting/tree/cutting-job';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';

/** What the page tells the planning worker. A new job replaces the current one at once. */
export type PlanningOrder =
  | {
      readonly order: 'plan';
      /** Numbers the search; news with a lower number is out of date. */
      readonly search: number;
      readonly job: CuttingJob;
      readonly milliseconds: number;
    }
  | { readonly order: 'search-on'; readonly milliseconds: number }
  | { readonly order: 'stop' };

/** Sent at the start, whenever a plan gets better, and when the search stops. */
export interface PlanningNews {
  readonly search: number;
  /** Null until every fabric has its first plan. */
  readonly answer: JobAnswer | null;
  /** `searching`; `rested`: the time is up or the search was stopped; `exhausted`: there is nothing left to try. */
  readonly state: 'searching' | 'rested' | 'exhausted';
  /** Time spent searching so far. */
  readonly milliseconds: number;
}

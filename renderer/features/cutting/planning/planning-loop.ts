import { type JobSearch, planCutting } from '#core/cutting/search/plan-cutting';
import { seededRandom } from '#core/units/seeded-random';
import type { PlanningNews, PlanningOrder } from './planning-protocol';

/** What the loop needs from the thread it runs in. */
export interface PlanningThread {
  readonly now: () => number;
  /** Calls back after the waiting messages, orders above all, have been handled. */
  readonly later: (next: () => void) => void;
  readonly send: (news: PlanningNews) => void;
}

/** Short enough that an order never waits noticeably. */
const SLICE_MILLISECONDS = 20;
const SEED = 1;

interface Search {
  readonly number: number;
  readonly plans: JobSearch;
  spent: number;
  allowed: number;
}

/** Runs the planner in slices of time: after each slice it reports a better plan and lets the next order in. */
export function planningLoop({ now, later, send }: PlanningThread): (order: PlanningOrder) => void {
  let search: Search | null = null;
  let isWaiting = false;

  const report = ({ number, plans, spent, allowed }: Search): void => {
    const stateByTime = spent >= allowed ? 'rested' : 'searching';
    send({
      search: number,
      answer: plans.answer() ?? null,
      state: plans.isFinished() ? 'exhausted' : stateByTime,
      milliseconds: spent,
    });
  };
  const slice = (): void => {
    isWaiting = false;
    if (search === null || search.plans.isFinished() || search.spent >= search.allowed) return;
    const start = now();
    const isBetter = search.plans.step(now, start + SLICE_MILLISECONDS);
    search.spent += now() - start;
    // A first plan of every fabric is always finished, even if the time allowed is too short for it.
    if (search.plans.answer() === undefined && !search.plans.isFinished()) {
      search.allowed = Math.max(search.allowed, search.spent + 1);
    }
    const isOver = search.plans.isFinished() || search.spent >= search.allowed;
    if (isBetter || isOver) report(search);
    if (!isOver) searchOn();
  };
  const searchOn = (): void => {
    if (isWaiting) return;
    isWaiting = true;
    later(slice);
  };
  return (order) => {
    switch (order.order) {
      case 'plan':
        search = {
          number: order.search,
          plans: planCutting(order.job, seededRandom(SEED)),
          spent: 0,
          // At least one slice runs; a slice extends the time until there is a first plan.
          allowed: Math.max(1, order.milliseconds),
        };
        searchOn();
        break;
      case 'search-on':
        if (search === null) return;
        search.allowed = search.spent + order.milliseconds;
        report(search);
        searchOn();
        break;
      case 'stop':
        if (search === null) return;
        search.allowed = search.spent;
        report(search);
        break;
    }
  };
}

import { type JobSearch, planCutting } from '#core/cutting/search/plan-cutting';
import { seededRandom } from '#core/cutting/search/seeded-random';
import type { PlanningNews, PlanningOrder } from './planning-protocol';

/** What the loop needs of the thread it runs in. */
export interface PlanningSurroundings {
  readonly now: () => number;
  /** Calls back once everything that waits (an order, above all) has been heard. */
  readonly later: (next: () => void) => void;
  readonly tell: (news: PlanningNews) => void;
}

/** Short enough that an order waits no longer than a blink. */
const SLICE_MILLISECONDS = 20;
const SEED = 1;

interface Search {
  readonly number: number;
  readonly plans: JobSearch;
  spent: number;
  allowed: number;
}

/** The planner in slices: hears an order, searches a slice, tells what got better, and hears again. */
export function planningLoop({ now, later, tell }: PlanningSurroundings): (order: PlanningOrder) => void {
  let search: Search | null = null;
  let isWaiting = false;

  const report = (of: Search): void => {
    const isResting = of.spent >= of.allowed ? 'rested' : 'searching';
    tell({
      search: of.number,
      answer: of.plans.answer() ?? null,
      state: of.plans.isFinished() ? 'exhausted' : isResting,
      milliseconds: of.spent,
    });
  };
  const slice = (): void => {
    isWaiting = false;
    if (search === null || search.plans.isFinished() || search.spent >= search.allowed) return;
    const start = now();
    const isBetter = search.plans.step(now, start + SLICE_MILLISECONDS);
    search.spent += now() - start;
    // The first plan of every fabric is owed even where the time allowed is shorter.
    if (search.plans.answer() === undefined && !search.plans.isFinished()) {
      search.allowed = Math.max(search.allowed, search.spent + 1);
    }
    const isOver = search.plans.isFinished() || search.spent >= search.allowed;
    if (isBetter || isOver) report(search);
    if (!isOver) goOn();
  };
  const goOn = (): void => {
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
          allowed: order.milliseconds,
        };
        goOn();
        break;
      case 'search-on':
        if (search === null) return;
        search.allowed = search.spent + order.milliseconds;
        report(search);
        goOn();
        break;
      case 'stop':
        if (search === null) return;
        search.allowed = search.spent;
        report(search);
        break;
    }
  };
}

import { areChainsPlain, type Chains, NEVER_DUE } from './chains';
import { improvedOrder, type Order, orderByKeys } from './improve-order';
import { isBeyondReach } from './lateness-bound';
import { searchOrder } from './search-order';
import type { WorkCalendar } from './work-calendar';

/** How much to search: on about 300 projects, `thorough` takes tens of milliseconds and `quick` a few. */
export type Effort = 'thorough' | 'quick';

/** The number of blocks scheduled in all trials together: with more blocks there are fewer trials. */
const BLOCKS_TRIED: Readonly<Record<Effort, number>> = { thorough: 24_000, quick: 4_000 };
/** Only small workshops are searched completely; in larger ones the search would not come near its end. */
const MOST_BLOCKS_SEARCHED = 40;
const BLOCKS_SEARCHED: Readonly<Record<Effort, number>> = { thorough: 200_000, quick: 20_000 };

/** The best order found, judged by the largest lateness, and whether it is proven that none is better. */
export function bestOrder(chains: Chains, calendar: WorkCalendar, effort: Effort): Order {
  const blocks = Math.max(1, chains.minutes.length);
  const trials = Math.min(300, Math.ceil(BLOCKS_TRIED[effort] / blocks));
  let best = improvedOrder(chains, calendar, trials);
  if (chains.dueDay.every((day) => day === NEVER_DUE)) return { ...best, isProven: true };
  if (blocks > MOST_BLOCKS_SEARCHED || !areChainsPlain(chains)) return best;
  const most = Math.ceil(BLOCKS_SEARCHED[effort] / blocks);
  while (!best.isProven) {
    const late = best.cost.largest - 1;
    if (isBeyondReach(chains, calendar, late)) return { ...best, isProven: true };
    const answer = searchOrder(chains, calendar, late, most);
    if (answer.found === 'none') return { ...best, isProven: true };
    if (answer.found === 'unknown') return best;
    best = orderByKeys(chains, calendar, answer.keys);
  }
  return best;
}

import type { Chains } from './chains';
import { isBeyondReach } from './lateness-bound';
import { latestDone } from './latest-done';
import { type Cost, costOf, isLess, listSchedule, type RunsInOrder } from './list-schedule';
import type { WorkCalendar } from './work-calendar';

/** An order of work, least key first, with the schedule it leads to. */
export interface Order {
  readonly keys: Float64Array;
  readonly schedule: RunsInOrder;
  readonly cost: Cost;
  readonly isProven: boolean;
}

/**
 * Starts with the block that must be done earliest first, which is the best order where nothing is sent out. Then moves single
 * blocks forward until the bound proves that no order is better. Tries at most `trials` schedules.
 */
export function improvedOrder(chains: Chains, calendar: WorkCalendar, trials: number): Order {
  let best = orderByKeys(chains, calendar, latestDone(chains, calendar, 0));
  if (best.cost.largest > 0) {
    // With days off and unequal weekdays, other blocks become the most urgent once everything may be a few days late.
    const later = orderByKeys(chains, calendar, latestDone(chains, calendar, best.cost.largest));
    if (isLess(later.cost, best.cost)) best = later;
  }
  let left = trials;
  while (left > 0) {
    if (isBeyondReach(chains, calendar, best.cost.largest - 1)) return { ...best, isProven: true };
    const better = tryMoves(chains, calendar, best, left);
    left -= better.tried;
    if (better.order === null) break;
    best = better.order;
  }
  return best;
}

export function orderByKeys(chains: Chains, calendar: WorkCalendar, keys: Float64Array): Order {
  const schedule = listSchedule(chains, calendar, keys);
  return { keys, schedule, cost: costOf(chains, schedule.finishDay), isProven: false };
}

interface Tried {
  readonly order: Order | null;
  readonly tried: number;
}

/** The first better order that results from moving one block forward. Blocks of the latest project are tried first. */
function tryMoves(chains: Chains, calendar: WorkCalendar, from: Order, trials: number): Tried {
  let tried = 0;
  for (const block of blocksToMove(chains, from)) {
    for (const before of waitedFor(from, block)) {
      if (tried >= trials) return { order: null, tried };
      tried += 1;
      const keys = Float64Array.from(from.keys);
      // Half a minute earlier is enough: keys start as whole work minutes.
      keys[block] = from.keys[before]! - 0.5;
      const order = orderByKeys(chains, calendar, keys);
      if (isLess(order.cost, from.cost)) return { order, tried };
    }
  }
  return { order: null, tried };
}

/** The blocks whose delay may make the latest project late: first its own, then the other blocks done before its last one. */
function blocksToMove(chains: Chains, { schedule, cost }: Order): readonly number[] {
  const { finishDay, doneAt } = schedule;
  const lateDays = (project: number): number => finishDay[project]! - chains.dueDay[project]!;
  const latest = finishDay.findIndex((_, project) => lateDays(project) === cost.largest);
  const [first, end] = [chains.firstBlock[latest] ?? 0, chains.firstBlock[latest + 1] ?? 0];
  const own = Array.from({ length: end - first }, (_, place) => first + place);
  const lastDone = Math.max(0, ...own.map((block) => doneAt[block]!));
  const others = Array.from(doneAt.keys()).filter(
    (block) => (block < first || block >= end) && doneAt[block]! < lastDone,
  );
  const isDelayed = (block: number) => doneAt[block]! - schedule.readyAt[block]! > chains.minutes[block]!;
  return [...own, ...others.toSorted((one, other) => doneAt[other]! - doneAt[one]!)].filter(isDelayed);
}

const MOST_PLACES = 6;

/** Blocks that are done while this one could be worked on: the one with the least key, then from the greatest key down. */
function waitedFor({ keys, schedule }: Order, block: number): readonly number[] {
  const { readyAt, doneAt } = schedule;
  const others = Array.from(doneAt.keys()).filter(
    (other) =>
      other !== block &&
      keys[other]! <= keys[block]! &&
      doneAt[other]! > readyAt[block]! &&
      doneAt[other]! < doneAt[block]!,
  );
  const byKey = others.toSorted((one, other) => keys[one]! - keys[other]!);
  return byKey.length <= MOST_PLACES ? byKey : [byKey[0]!, ...byKey.slice(1 - MOST_PLACES).toReversed()];
}

import type { Chains } from './chains';
import { earliestReadyDays, latestDone } from './latest-done';
import { listSchedule } from './list-schedule';
import type { WorkCalendar } from './work-calendar';

/**
 * Whether it is proven that every order makes some project more than `late` days late. Each block is taken out of its chain: it
 * may begin and end on the days that would be possible if its project had the hands to itself. For such blocks it is best to
 * work on the one with the earliest end first, so if even that is too late, every order is.
 */
export function isBeyondReach(chains: Chains, calendar: WorkCalendar, late: number): boolean {
  const latest = latestDone(chains, calendar, late);
  const loose = looseBlocks(chains, calendar);
  const { doneAt } = listSchedule(loose, calendar, latest);
  if (doneAt.some((done, block) => done > latest[block]!)) return true;
  // Projects without work are finished when they are ready, whatever the order.
  for (let project = 0; project < chains.count; project += 1) {
    const hasWork = chains.firstBlock[project] !== chains.firstBlock[project + 1];
    if (!hasWork && chains.readyDay[project]! - chains.dueDay[project]! > late) return true;
  }
  return false;
}

function looseBlocks(chains: Chains, calendar: WorkCalendar): Chains {
  const size = chains.minutes.length;
  return {
    ...chains,
    count: size,
    firstBlock: Int32Array.from({ length: size + 1 }, (_, block) => block),
    groupEnd: Int32Array.from({ length: size }, (_, block) => block + 1),
    groupWait: new Int32Array(size),
    waitBefore: new Int32Array(size),
    projectOf: Int32Array.from({ length: size }, (_, block) => block),
    readyDay: earliestReadyDays(chains, calendar),
    waitAfter: new Int32Array(size),
    dueDay: new Int32Array(size),
  };
}

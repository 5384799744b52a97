import type { Chains } from './chains';
import { earliestReadyDays, latestDone } from './latest-done';
import { listSchedule } from './list-schedule';
import type { WorkCalendar } from './work-calendar';

/**
 * Whether it is certain that no order keeps every project within `late` days of its due day. Every block is let loose from
 * its chain, free to begin as early as if the hands were its project's own and to end as late; for such blocks working by
 * the earliest end is best, so if even that fails nothing succeeds.
 */
export function isBeyondReach(chains: Chains, calendar: WorkCalendar, late: number): boolean {
  const latest = latestDone(chains, calendar, late);
  const loose = looseBlocks(chains, calendar);
  const { doneAt } = listSchedule(loose, calendar, latest);
  if (doneAt.some((done, block) => done > latest[block]!)) return true;
  // Projects without work left are finished when they are ready; nothing moves them.
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

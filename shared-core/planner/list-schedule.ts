import { makeBlockHeap } from './block-heap';
import type { Chains } from './chains';
import type { WorkCalendar } from './work-calendar';

/** Uninterrupted work on one block, from the first work minute to the last. */
export interface Run {
  readonly block: number;
  readonly from: number;
  readonly to: number;
}

export interface RunsInOrder {
  /** The work minute at which a block may begin, and the one at which it is done. */
  readonly readyAt: Float64Array;
  readonly doneAt: Float64Array;
  readonly finishDay: Int32Array;
}

/**
 * Schedules all blocks: at every moment the hands work on the block with the least key among those that may be worked on, and
 * change to another block when one with a lesser key becomes ready. They are never idle while a block is ready.
 *
 * This rules out no best schedule. In any schedule, number the blocks by when they are done. Of two blocks that are both ready,
 * the one that is done first can have all the early minutes without making the other later. So some keys lead to the best
 * schedule.
 */
export function listSchedule(
  chains: Chains,
  calendar: WorkCalendar,
  keys: Float64Array,
  record?: (run: Run) => void,
): RunsInOrder {
  const { count, firstBlock, groupEnd, minutes, waitBefore, waitAfter, groupWait, projectOf } = chains;
  const readyAt = new Float64Array(minutes.length);
  const doneAt = new Float64Array(minutes.length);
  const finishDay = Int32Array.from(chains.readyDay);
  const left = Float64Array.from(minutes);
  const available = makeBlockHeap(keys);
  const coming = makeBlockHeap(readyAt);
  /**
   * For each project, the number of blocks in its current group that are not done. Until the last group is done,
   * `finishDay` is the day on which the current group is over.
   */
  const undone = new Int32Array(count);
  const beginGroup = (project: number, first: number): void => {
    const day = finishDay[project]!;
    undone[project] = groupEnd[first]! - first;
    finishDay[project] = day + groupWait[first]!;
    for (let block = first; block < groupEnd[first]!; block += 1) {
      readyAt[block] = calendar.minutesBefore(day + waitBefore[block]!);
      coming.push(block);
    }
  };
  for (let project = 0; project < count; project += 1) {
    if (firstBlock[project] !== firstBlock[project + 1]) beginGroup(project, firstBlock[project]!);
  }
  let now = 0;
  for (;;) {
    while (coming.size() > 0 && readyAt[coming.first()]! <= now) available.push(coming.pop());
    if (available.size() === 0) {
      if (coming.size() === 0) break;
      now = readyAt[coming.first()]!;
      continue;
    }
    const block = available.first();
    const done = now + left[block]!;
    const next = coming.size() > 0 ? readyAt[coming.first()]! : Infinity;
    const until = Math.min(done, next);
    record?.({ block, from: now, to: until });
    left[block] = done - until;
    now = until;
    if (done > until) continue;
    available.pop();
    doneAt[block] = done;
    const project = projectOf[block]!;
    finishDay[project] = Math.max(finishDay[project]!, calendar.dayWhenDone(done) + waitAfter[block]!);
    undone[project]! -= 1;
    if (undone[project] === 0 && groupEnd[block]! < firstBlock[project + 1]!)
      beginGroup(project, groupEnd[block]!);
  }
  return { readyAt, doneAt, finishDay };
}

/**
 * How bad a schedule is. The largest lateness counts first, then the sum of all days late, then the sum of all finish days.
 */
export interface Cost {
  readonly largest: number;
  readonly lateSum: number;
  readonly finishSum: number;
}

export function costOf(chains: Chains, finishDay: Int32Array): Cost {
  let [largest, lateSum, finishSum] = [-Infinity, 0, 0];
  for (let project = 0; project < chains.count; project += 1) {
    const late = finishDay[project]! - chains.dueDay[project]!;
    if (late > largest) largest = late;
    if (late > 0) lateSum += late;
    finishSum += finishDay[project]!;
  }
  return { largest, lateSum, finishSum };
}

export function isLess(one: Cost, other: Cost): boolean {
  if (one.largest !== other.largest) return one.largest < other.largest;
  if (one.lateSum !== other.lateSum) return one.lateSum < other.lateSum;
  return one.finishSum < other.finishSum;
}

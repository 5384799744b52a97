import { makeBlockHeap } from './block-heap';
import type { Chains } from './chains';
import type { WorkCalendar } from './work-calendar';

/** A stretch of one block in work minutes, from before the first to after the last. */
export interface Run {
  readonly block: number;
  readonly from: number;
  readonly to: number;
}

export interface RunsInOrder {
  /** Work minute at which a block may begin, and at which it is done. */
  readonly readyAt: Float64Array;
  readonly doneAt: Float64Array;
  readonly finishDay: Int32Array;
}

/**
 * Works through all blocks: at every moment the hands are at the block of least key among those that may be worked on, and
 * leave it when one of a lesser key comes back. Hands are never idle while there is something to do.
 *
 * That loses nothing: take any schedule and rank the blocks by when they are done; of two blocks that both may be worked on,
 * giving all early minutes to the one that is done first makes neither later. So for some keys this gives the best there is.
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
  /** Of each project how many blocks of its group are not done; `finishDay` is until then the day on which the group is over. */
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

/** How bad a schedule is: the largest lateness counts before the sum of all days late, and that before the sum of all finish days. */
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

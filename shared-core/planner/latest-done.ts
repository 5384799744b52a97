import { type Chains, NEVER_DUE } from './chains';
import type { WorkCalendar } from './work-calendar';

/**
 * For each block, the last work minute by which it must be done so that its project is at most `late` days late, if the project
 * had the hands to itself. Blocks of projects without a due day come after all others, in the order of their projects.
 */
export function latestDone(chains: Chains, calendar: WorkCalendar, late: number): Float64Array {
  const { count, firstBlock, minutes, waitBefore, waitAfter, groupWait, dueDay } = chains;
  const latest = new Float64Array(minutes.length);
  for (let project = 0; project < count; project += 1) {
    let byDay = dueDay[project]! + late;
    // All blocks of a group have the same last day, so `byDay` changes only at the first block of the group.
    let before = byDay;
    for (let block = firstBlock[project + 1]! - 1; block >= firstBlock[project]!; block -= 1) {
      if (dueDay[project] === NEVER_DUE) {
        latest[block] = NEVER_DUE * 1e3 + project;
        continue;
      }
      const done = calendar.minutesBefore(byDay - waitAfter[block]! + 1);
      latest[block] = done;
      const start = calendar.dayWhenBegun(done - minutes[block]!) - waitBefore[block]!;
      before = Math.min(before, start, byDay - groupWait[block]!);
      if (isFirstOfGroup(chains, block)) byDay = before;
    }
  }
  return latest;
}

/** For each block, the earliest day on which it could begin if every stage had a pair of hands to itself. */
export function earliestReadyDays(chains: Chains, calendar: WorkCalendar): Int32Array {
  const { minutes, waitBefore, waitAfter, groupWait, groupEnd, firstBlock } = chains;
  const ready = new Int32Array(minutes.length);
  for (let project = 0; project < chains.count; project += 1) {
    let day = chains.readyDay[project]!;
    let after = day;
    for (let block = firstBlock[project]!; block < firstBlock[project + 1]!; block += 1) {
      ready[block] = day + waitBefore[block]!;
      const done = calendar.minutesBefore(ready[block]!) + minutes[block]!;
      after = Math.max(after, calendar.dayWhenDone(done) + waitAfter[block]!, day + groupWait[block]!);
      if (groupEnd[block] === block + 1) day = after;
    }
  }
  return ready;
}

function isFirstOfGroup({ groupEnd }: Chains, block: number): boolean {
  return block === 0 || groupEnd[block - 1] === block;
}

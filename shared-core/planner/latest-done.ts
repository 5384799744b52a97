import { type Chains, NEVER_DUE } from './chains';
import type { WorkCalendar } from './work-calendar';

/**
 * Of each block the last work minute at which it may be done for its project to be at most `late` days late, were the hands
 * its own. Blocks of projects without a due day come after all others, in the order of their projects.
 */
export function latestDone(chains: Chains, calendar: WorkCalendar, late: number): Float64Array {
  const { count, firstBlock, minutes, waitAfter, dueDay } = chains;
  const latest = new Float64Array(minutes.length);
  for (let project = 0; project < count; project += 1) {
    let byDay = dueDay[project]! + late;
    for (let block = firstBlock[project + 1]! - 1; block >= firstBlock[project]!; block -= 1) {
      if (dueDay[project] === NEVER_DUE) {
        latest[block] = NEVER_DUE * 1e3 + project;
        continue;
      }
      const done = calendar.minutesBefore(byDay - waitAfter[block]! + 1);
      latest[block] = done;
      byDay = calendar.dayWhenBegun(done - minutes[block]!);
    }
  }
  return latest;
}

/** Of each block the day on which it may begin at the earliest, were the hands its project's own. */
export function earliestReadyDays(chains: Chains, calendar: WorkCalendar): Int32Array {
  const ready = new Int32Array(chains.minutes.length);
  for (let project = 0; project < chains.count; project += 1) {
    let day = chains.readyDay[project]!;
    for (let block = chains.firstBlock[project]!; block < chains.firstBlock[project + 1]!; block += 1) {
      ready[block] = day;
      const done = calendar.minutesBefore(day) + chains.minutes[block]!;
      day = calendar.dayWhenDone(done) + chains.waitAfter[block]!;
    }
  }
  return ready;
}

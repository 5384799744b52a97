import { type Chains, NEVER_DUE } from './chains';
import { latestDone } from './latest-done';
import type { WorkCalendar } from './work-calendar';

/**
 * The result of a search: keys that keep every project within the lateness, none if such keys do not exist, or unknown if
 * the search gave up.
 */
export type SearchAnswer =
  | { readonly found: 'order'; readonly keys: Float64Array }
  | { readonly found: 'none' }
  | { readonly found: 'unknown' };

/**
 * Searches for an order in which every project with a due day is at most `late` days late. The chosen project goes before all
 * others that could be chosen until its block is done (`listSchedule` says why this rules out no best schedule), so there is
 * a choice only when a block is done or becomes ready. Gives up after `most` choices.
 */
export function searchOrder(
  chains: Chains,
  calendar: WorkCalendar,
  late: number,
  most: number,
): SearchAnswer {
  const { count, firstBlock, minutes, waitAfter, dueDay } = chains;
  const latest = latestDone(chains, calendar, late);
  const pressing = Array.from(latest.keys())
    .filter((block) => dueDay[chains.projectOf[block]!] !== NEVER_DUE)
    .toSorted((one, other) => latest[one]! - latest[other]!);
  const dated = Array.from({ length: count }, (_, project) => project).filter(
    (project) => dueDay[project] !== NEVER_DUE,
  );
  const current = Int32Array.from(firstBlock.subarray(0, count));
  const readyAt = Float64Array.from(chains.readyDay, (day) => calendar.minutesBefore(day));
  const left = Float64Array.from(minutes);
  const doneAt = Float64Array.from(latest);
  /** The project that goes before this one until its block is done; -1 for none. */
  const behind = new Int32Array(count).fill(-1);
  let choices = 0;
  const isOpen = (project: number) => current[project]! < firstBlock[project + 1]!;

  /** True if the remaining blocks cannot all be done in time even without any waits. */
  const isHopeless = (now: number): boolean => {
    let done = now;
    for (const block of pressing) {
      done += left[block]!;
      if (left[block]! > 0 && done > latest[block]!) return true;
    }
    return false;
  };

  const run = (project: number, now: number, until: number): boolean => {
    const block = current[project]!;
    const [oldReady, oldBehind] = [readyAt[project]!, Int32Array.from(behind)];
    for (const other of dated) {
      if (other !== project && isOpen(other) && readyAt[other]! <= now && behind[other] === -1)
        behind[other] = project;
    }
    left[block] = left[block]! - (until - now);
    const isDone = left[block] === 0;
    if (isDone) {
      doneAt[block] = until;
      current[project] = block + 1;
      readyAt[project] = calendar.minutesBefore(calendar.dayWhenDone(until) + waitAfter[block]!);
      for (const other of dated) if (behind[other] === project) behind[other] = -1;
    }
    const isFound = descend(until);
    if (isFound) return true;
    left[block] += until - now;
    current[project] = block;
    readyAt[project] = oldReady;
    behind.set(oldBehind);
    return false;
  };

  const descend = (from: number): boolean => {
    choices += 1;
    if (choices > most || isHopeless(from)) return false;
    const open = dated.filter(isOpen);
    if (open.length === 0) return true;
    const now = Math.max(from, Math.min(...open.map((project) => readyAt[project]!)));
    const coming = open.filter((project) => readyAt[project]! > now);
    const next = Math.min(...coming.map((project) => readyAt[project]!), Infinity);
    return open
      .filter((project) => readyAt[project]! <= now && behind[project] === -1)
      .toSorted((one, other) => latest[current[one]!]! - latest[current[other]!]!)
      .some((project) => run(project, now, Math.min(next, now + left[current[project]!]!)));
  };

  if (descend(0)) return { found: 'order', keys: doneAt };
  return { found: choices > most ? 'unknown' : 'none' };
}

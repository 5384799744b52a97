import { mergedChainsOf, NEVER_DUE } from './chains';
import { isInTime } from './is-in-time';
import { earliestReadyDays } from './latest-done';
import { makeWorkCalendar } from './work-calendar';
import type { Hands, WorkshopLoad } from './workshop-load';

/** No day gets longer than this, unless it already is. */
const LONGEST_DAY = 12 * 60;
const STEP = 30;

/** What more hours of work can do about late projects. */
export interface MoreHours {
  /**
   * The extra minutes a week, in steps of half an hour, that finish in time every project that hours can help; null if no
   * number is enough.
   */
  readonly extraWeekMinutes: number | null;
  /** Projects that are late however long the hours are, because their waits take too long. */
  readonly beyondHours: readonly string[];
}

/** The least extra hours a week, spread over the days with hours, or over all seven if there are none. */
export function moreHours(load: WorkshopLoad): MoreHours {
  const longest = withExtra(load.hands, 7 * LONGEST_DAY);
  const beyondHours = lateByThemselves({ ...load, hands: longest });
  const rest = {
    ...load,
    // They still need hours, but they no longer have a due day to miss.
    projects: load.projects.map((project) =>
      beyondHours.includes(project.id) ? { ...project, dueOn: null } : project,
    ),
  };
  const isEnough = (steps: number) => isInTime({ ...rest, hands: withExtra(load.hands, steps * STEP) });
  const most = Math.ceil((7 * LONGEST_DAY) / STEP);
  if (!isEnough(most)) return { extraWeekMinutes: null, beyondHours };
  let [tooFew, enough] = [-1, most];
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else tooFew = middle;
  }
  return { extraWeekMinutes: enough * STEP, beyondHours };
}

/**
 * The same hands with extra minutes in a week, up to the longest day. If the minutes do not divide evenly, each day is
 * rounded up.
 */
export function withExtra(hands: Hands, weekMinutes: number): Hands {
  const { weekMinutes: usual } = hands;
  const hasNone = usual.every((minutes) => minutes === 0);
  const days = hasNone ? 7 : usual.filter((minutes) => minutes > 0).length;
  const share = Math.ceil(weekMinutes / days);
  const more = (minutes: number): number =>
    minutes > 0 || hasNone ? Math.max(minutes, Math.min(LONGEST_DAY, minutes + share)) : 0;
  const [monday, tuesday, wednesday, thursday, friday, saturday, sunday] = usual;
  return {
    ...hands,
    weekMinutes: [
      more(monday),
      more(tuesday),
      more(wednesday),
      more(thursday),
      more(friday),
      more(saturday),
      more(sunday),
    ],
  };
}

/** The projects that are late even if the hands work on nothing else. */
function lateByThemselves(load: WorkshopLoad): readonly string[] {
  const calendar = makeWorkCalendar(load.today, load.hands);
  const chains = mergedChainsOf(load, calendar);
  const ready = earliestReadyDays(chains, calendar);
  return load.projects
    .filter((_, project) => {
      const [first, end] = [chains.firstBlock[project]!, chains.firstBlock[project + 1]!];
      if (chains.dueDay[project] === NEVER_DUE) return false;
      if (end === first) return chains.readyDay[project]! > chains.dueDay[project]!;
      const days = Array.from({ length: end - first }, (_one, place) => {
        const block = first + place;
        const done = calendar.minutesBefore(ready[block]!) + chains.minutes[block]!;
        return calendar.dayWhenDone(done) + chains.waitAfter[block]!;
      });
      return Math.max(...days) > chains.dueDay[project]!;
    })
    .map(({ id }) => id);
}

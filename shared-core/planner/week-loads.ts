import { addDays, daysBetween, weekday } from '#core/units/calendar-date';
import { mergedChainsOf, NEVER_DUE } from './chains';
import type { Schedule, WeekLoad } from './schedule';
import { latestDone } from './latest-done';
import { makeWorkCalendar } from './work-calendar';
import type { WorkshopLoad } from './workshop-load';

/** Ten years of weeks, which is farther than anyone needs to look. */
const MOST_WEEKS = 520;

/**
 * The weeks from today to the last one with work or a due day. The minutes short at the end of a week are the work that must be
 * done by then to finish everything in time, less the minutes available until then. No order of work can make up for them.
 */
export function weekLoads(load: WorkshopLoad, plan: Schedule): readonly WeekLoad[] {
  const calendar = makeWorkCalendar(load.today, load.hands);
  const firstDay = 1 - weekday(load.today);
  const weekOf = (day: number) => Math.floor((day - firstDay) / 7);
  const chains = mergedChainsOf(load, calendar);
  const latest = latestDone(chains, calendar, 0);
  const lastDue = Math.max(0, ...chains.dueDay.filter((day) => day !== NEVER_DUE));
  const planned = new Map<number, number>();
  for (const { on, minutes } of plan.sessions) {
    const week = weekOf(daysBetween(load.today, on));
    planned.set(week, (planned.get(week) ?? 0) + minutes);
  }
  const lastWeek = Math.max(weekOf(lastDue), ...planned.keys());
  const pressing = Array.from(latest.keys())
    .filter((block) => chains.dueDay[chains.projectOf[block]!] !== NEVER_DUE)
    .toSorted((one, other) => latest[one]! - latest[other]!);
  let [needed, next] = [0, 0];
  return Array.from({ length: Math.min(MOST_WEEKS, lastWeek + 1) }, (_, week): WeekLoad => {
    const monday = firstDay + 7 * week;
    const room = calendar.minutesBefore(monday + 7);
    for (; next < pressing.length && latest[pressing[next]!]! <= room; next += 1) {
      needed += chains.minutes[pressing[next]!]!;
    }
    return {
      from: addDays(load.today, monday),
      roomMinutes: room - calendar.minutesBefore(Math.max(0, monday)),
      plannedMinutes: planned.get(week) ?? 0,
      shortMinutes: Math.max(0, needed - room),
    };
  });
}

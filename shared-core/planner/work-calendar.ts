import { addDays, type CalendarDate, daysBetween, weekday } from '#core/units/calendar-date';
import { FARTHEST_DAY } from './schedule';
import type { Hands } from './workshop-load';

/**
 * Two ways to count time. Days are whole numbers from today (0). Work minutes count only the time that the hands work, from
 * this morning on:
 *
 *     day            0 (60 min)   1 (off)   2 (90 min)
 *     work minute    0 ..... 60             60 ..... 150
 *
 * so that a step of work is a range of work minutes, whatever days off it includes.
 */
export interface WorkCalendar {
  readonly dayOf: (date: CalendarDate) => number;
  readonly dateOf: (day: number) => CalendarDate;
  /** Work minutes before the morning of a day. */
  readonly minutesBefore: (day: number) => number;
  /** The day by whose end this many work minutes are over: day 0 for 1 to 60 in the example, day 2 for 61. */
  readonly dayWhenDone: (minute: number) => number;
  /** The day on which the minute after this one is worked. */
  readonly dayWhenBegun: (minute: number) => number;
}

/**
 * Before today, where dates only measure urgency, every day counts as an average day. Beyond the farthest day every minute is a
 * work minute, so that every calculation ends.
 */
export function makeWorkCalendar(today: CalendarDate, hands: Hands): WorkCalendar {
  const isOff = daysOffFrom(today, hands);
  const firstWeekday = weekday(today) - 1;
  const before: number[] = [0];
  const minutesOn = (day: number): number => {
    if (day > FARTHEST_DAY) return 1440;
    return isOff.has(day) ? 0 : (hands.weekMinutes[(firstWeekday + day) % 7] ?? 0);
  };
  const grow = (): void => {
    const day = before.length - 1;
    before.push(before[day]! + minutesOn(day));
  };
  const dates = new Map<number, CalendarDate>();
  const average = Math.max(1, Math.floor(hands.weekMinutes.reduce((sum, one) => sum + one, 0) / 7));
  const minutesBefore = (day: number): number => {
    if (day < 0) return day * average;
    while (before.length <= day) grow();
    return before[day]!;
  };
  const dayWhenDone = (minute: number): number => {
    if (minute <= 0) return Math.ceil(minute / average) - 1;
    while (before[before.length - 1]! < minute) grow();
    return firstAtLeast(before, minute) - 1;
  };
  return {
    dayOf: (date) => daysBetween(today, date),
    dateOf: (day) => {
      const date = dates.get(day) ?? addDays(today, day);
      dates.set(day, date);
      return date;
    },
    minutesBefore,
    dayWhenDone,
    dayWhenBegun: (minute) => dayWhenDone(minute + 1),
  };
}

function daysOffFrom(today: CalendarDate, hands: Hands): ReadonlySet<number> {
  const off = new Set<number>();
  for (const { from, to } of hands.daysOff) {
    const last = Math.min(FARTHEST_DAY, daysBetween(today, to));
    for (let day = Math.max(0, daysBetween(today, from)); day <= last; day += 1) off.add(day);
  }
  return off;
}

/** The first place whose value is at least `least`; the values never decrease. */
function firstAtLeast(values: readonly number[], least: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

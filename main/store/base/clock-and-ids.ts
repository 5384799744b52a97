import { randomUUID } from 'node:crypto';
import { type CalendarDate, calendarDateFromParts } from '#core/units/calendar-date';

/** The store's only clock and its only source of new identifiers. Tests pass in their own. */
export interface ClockAndIds {
  /** UTC, in milliseconds. */
  readonly now: () => number;
  /** The day on the maker's own calendar. */
  readonly today: () => CalendarDate;
  /** A new random UUID. */
  readonly newId: () => string;
}

export function systemClockAndIds(): ClockAndIds {
  return {
    now: () => Date.now(),
    today: () => {
      const now = new Date();
      return calendarDateFromParts({
        year: now.getFullYear(),
        month: now.getMonth() + 1,
        day: now.getDate(),
      });
    },
    newId: () => randomUUID(),
  };
}

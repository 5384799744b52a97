import { calendarDate, type CalendarDate, calendarDateParts, daysBetween } from '#core/units/calendar-date';
import { firstDayOf, isWholeDate, type PartialDate } from '#core/units/partial-date';

/** Today in the maker's time zone, which only the window knows. */
export function today(now: Date = new Date()): CalendarDate {
  const digits = (value: number, count: number) => String(value).padStart(count, '0');
  return calendarDate(
    `${digits(now.getFullYear(), 4)}-${digits(now.getMonth() + 1, 2)}-${digits(now.getDate(), 2)}`,
  );
}

/** `12 Sep`; with its year if that is not the year of `on`. */
export function dateWords(date: CalendarDate, locale: string, on: CalendarDate): string {
  const isThisYear = calendarDateParts(date).year === calendarDateParts(on).year;
  return format(date, locale, { day: 'numeric', month: 'short', ...(isThisYear ? {} : { year: 'numeric' }) });
}

/** `12 Sep`, `Sep 2027` or `2027`, as well as it is known; `day not known` for no day. */
export function partialDateWords(date: PartialDate | null, locale: string, on: CalendarDate): string {
  if (date === null) return 'day not known';
  if (isWholeDate(date)) return dateWords(date, locale, on);
  return date.length === 4 ? date : monthWords(firstDayOf(date), locale);
}

/** `Sun 12 Sep`, with the year as in `dateWords`: for a day on which something has to be done. */
export function weekdayWords(date: CalendarDate, locale: string, on: CalendarDate): string {
  return `${format(date, locale, { weekday: 'short' })} ${dateWords(date, locale, on)}`;
}

/** `Sep 2027`, for the months of a calendar scale. */
export function monthWords(date: CalendarDate, locale: string): string {
  return format(date, locale, { month: 'short', year: 'numeric' });
}

/** `1 day`, `9 days`. */
export function daysWords(days: number): string {
  return days === 1 ? '1 day' : `${String(days)} days`;
}

/** `Sunday 12 September 2027`, for paper and for the log. */
export function longDateWords(date: CalendarDate, locale: string): string {
  return format(date, locale, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
}

/** How far a day is from today: `today`, `tomorrow`, `in 12 days`, `3 days ago`, `in 7 weeks`. */
export function farWords(date: CalendarDate, on: CalendarDate): string {
  const days = daysBetween(on, date);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  const size = Math.abs(days);
  const count =
    size < 29
      ? `${String(size)} days`
      : size < 106
        ? `${String(Math.floor(size / 7))} weeks`
        : `${String(Math.floor(size / 30.44))} months`;
  return days > 0 ? `in ${count}` : `${count} ago`;
}

/** How late a day is: `1 day`, `9 days`; empty if it is not late. */
export function lateWords(due: CalendarDate, on: CalendarDate): string {
  const days = daysBetween(due, on);
  return days <= 0 ? '' : daysWords(days);
}

/** `12 Sep, 14:05`: an instant (UTC milliseconds) in the maker's time zone, with the year if it is not this one. */
export function instantWords(at: number, locale: string): string {
  const [moment, now] = [new Date(at), new Date()];
  const time = new Intl.DateTimeFormat(locale, { hour: 'numeric', minute: '2-digit' }).format(moment);
  return `${dateWords(today(moment), locale, today(now))}, ${time}`;
}

/** The day of an instant (UTC milliseconds) in the maker's time zone. */
export function dayOfInstant(at: number): CalendarDate {
  return today(new Date(at));
}

function format(date: CalendarDate, locale: string, options: Intl.DateTimeFormatOptions): string {
  const { year, month, day } = calendarDateParts(date);
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' }).format(
    new Date(Date.UTC(year, month - 1, day)),
  );
}

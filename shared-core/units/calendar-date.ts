import { failure, type Result, success } from '#core/result';

declare const calendarDateBrand: unique symbol;

/** A day of the proleptic Gregorian calendar as ISO 8601 `YYYY-MM-DD`, years 0001 to 9999; it sorts as text. */
export type CalendarDate = string & { readonly [calendarDateBrand]: 'CalendarDate' };

export interface CalendarDateParts {
  readonly year: number;
  /** 1 is January. */
  readonly month: number;
  readonly day: number;
}

export interface CalendarDateProblem {
  /** not-a-date: not of the form YYYY-MM-DD; no-such-day: of the form, but the calendar has no such day. */
  readonly code: 'not-a-date' | 'no-such-day';
  readonly read: string;
}

/** 1 is Monday and 7 is Sunday, as in ISO 8601. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** The form is strict (no spaces, four digits of year): the text of a valid date is the date. */
export function calendarDateFromText(text: string): Result<CalendarDate, CalendarDateProblem> {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  if (year === undefined) return failure({ code: 'not-a-date', read: text.slice(0, 40) });
  const doesExist = isDay({ year: Number(year), month: Number(month), day: Number(day) });
  return doesExist ? success(text as CalendarDate) : failure({ code: 'no-such-day', read: text });
}

/** For dates known to be good; throws RangeError otherwise. */
export function calendarDate(text: string): CalendarDate {
  const date = calendarDateFromText(text);
  if (!date.ok) throw new RangeError(`Not a calendar date: ${date.error.read}`);
  return date.value;
}

/** Throws RangeError when the calendar has no such day. */
export function calendarDateFromParts(parts: CalendarDateParts): CalendarDate {
  return calendarDate(textOfParts(parts));
}

function textOfParts({ year, month, day }: CalendarDateParts): string {
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}`;
}

function digits(value: number, count: number): string {
  return String(value).padStart(count, '0');
}

export function calendarDateParts(date: CalendarDate): CalendarDateParts {
  return { year: numberAt(date, 0, 4), month: numberAt(date, 5, 7), day: numberAt(date, 8, 10) };
}

/** Digit by digit: the planner reads thousands of dates, and a part cut out of each would be thrown away. */
function numberAt(date: CalendarDate, from: number, to: number): number {
  let value = 0;
  for (let place = from; place < to; place += 1) value = 10 * value + (date.charCodeAt(place) - DIGIT_ZERO);
  return value;
}

const DIGIT_ZERO = '0'.charCodeAt(0);

/** `days` must be whole and may be negative; throws RangeError otherwise, or when the day falls outside years 1 to 9999. */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  if (!Number.isSafeInteger(days)) throw new RangeError(`Not whole days: ${String(days)}`);
  return dateOfDayNumber(dayNumber(date) + days);
}

/** Whole days from one date to the other: 1 from today to tomorrow, negative when `to` comes first. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}

export function weekday(date: CalendarDate): Weekday {
  return ((dayNumber(date) % 7) + 1) as Weekday;
}

/** For sorting, earliest first. */
export function compareDates(first: CalendarDate, second: CalendarDate): number {
  return daysBetween(second, first);
}

const DAYS_IN_4_YEARS = 4 * 365 + 1;
const DAYS_IN_100_YEARS = 25 * DAYS_IN_4_YEARS - 1;
const DAYS_IN_400_YEARS = 4 * DAYS_IN_100_YEARS + 1;
/** Of each month the days before it in a year that is no leap year; one more at the end. */
const DAYS_BEFORE_MONTH: readonly number[] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Days since 0001-01-01, which is a Monday in this calendar. */
function dayNumber(date: CalendarDate): number {
  const { year, month, day } = calendarDateParts(date);
  return daysBeforeYear(year) + daysBeforeMonth(year, month) + day - 1;
}

/**
 * Peels off cycles of 400, 100, 4 and 1 years; the last century and the last year of a cycle are a day longer. Counting months as 31
 * days falls short by one at most.
 */
function dateOfDayNumber(days: number): CalendarDate {
  const in400 = ((days % DAYS_IN_400_YEARS) + DAYS_IN_400_YEARS) % DAYS_IN_400_YEARS;
  const centuries = Math.min(3, Math.floor(in400 / DAYS_IN_100_YEARS));
  const in100 = in400 - centuries * DAYS_IN_100_YEARS;
  const in4 = in100 % DAYS_IN_4_YEARS;
  const years = Math.min(3, Math.floor(in4 / 365));
  const fours = (in100 - in4) / DAYS_IN_4_YEARS;
  const year = ((days - in400) / DAYS_IN_400_YEARS) * 400 + centuries * 100 + fours * 4 + years + 1;
  if (year < 1 || year > 9999) throw new RangeError(`Outside the calendar: day ${String(days)}`);
  const inYear = days - daysBeforeYear(year);
  const atLeast = Math.floor(inYear / 31) + 1;
  const month = daysBeforeMonth(year, atLeast + 1) <= inYear ? atLeast + 1 : atLeast;
  return textOfParts({ year, month, day: inYear - daysBeforeMonth(year, month) + 1 }) as CalendarDate;
}

function daysBeforeYear(year: number): number {
  const past = year - 1;
  return 365 * past + Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
}

function daysBeforeMonth(year: number, month: number): number {
  return (DAYS_BEFORE_MONTH[month - 1] ?? 0) + (month > 2 && isLeapYear(year) ? 1 : 0);
}

function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

function isDay({ year, month, day }: CalendarDateParts): boolean {
  if (year < 1 || month < 1 || month > 12 || day < 1) return false;
  return day <= daysBeforeMonth(year, month + 1) - daysBeforeMonth(year, month);
}

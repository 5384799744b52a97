import { failure, type Result, success } from '#core/result';
import { type CalendarDate, type CalendarDateProblem, calendarDateFromText } from './calendar-date';

declare const monthOrYearBrand: unique symbol;

/** `2024-03` or `2024`: when something was, if the day is not known. */
type MonthOrYear = string & { readonly [monthOrYearBrand]: 'MonthOrYear' };

/** A day, a month or a year. Sorted as text, a year comes before its months and a month before its days. */
export type PartialDate = CalendarDate | MonthOrYear;

/** Strict, as for calendar dates: the text of a valid one is the value. */
export function partialDateFromText(text: string): Result<PartialDate, CalendarDateProblem> {
  const first = /^\d{4}(?:-\d\d)?$/.test(text) ? `${text}-01-01`.slice(0, 10) : text;
  const day = calendarDateFromText(first);
  return day.ok ? success(text as PartialDate) : failure({ ...day.error, read: text.slice(0, 40) });
}

/** The first day of a month or year; a day is itself. */
export function firstDayOf(date: PartialDate): CalendarDate {
  return `${date}-01-01`.slice(0, 10) as CalendarDate;
}

export function isWholeDate(date: PartialDate): date is CalendarDate {
  return date.length === 10;
}

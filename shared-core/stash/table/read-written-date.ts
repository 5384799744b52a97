import { failure, type Result } from '#core/result';
import { type PartialDate, partialDateFromText } from '#core/units/partial-date';
import type { DateOrder } from './column-habits';

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/**
 * Reads a day, month or year as people write it: `2025-03-14`, `3/14/2025`, `14.3.25`, `March 14, 2025`, `14 Mar 2025`, `Dec 2024`,
 * `12/2024`, `2024`. Two digits of a year are of this century. `order` decides 3/4/2025 where only one reading is a date.
 */
export function readWrittenDate(text: string, order: DateOrder): Result<PartialDate, null> {
  const typed = text.trim().toLowerCase().replaceAll(',', ' ').replace(/\s+/g, ' ');
  for (const made of candidates(typed, order)) {
    const read = partialDateFromText(made);
    if (read.ok) return read;
  }
  return failure(null);
}

/** The dates that the text could be, the likeliest first, as partial dates are written. */
function candidates(typed: string, order: DateOrder): readonly string[] {
  const numbered = /^(\d{1,2})[./ -](\d{1,2})[./ -](\d{4}|\d{2})(?: \d.*)?$/.exec(typed);
  if (numbered !== null) {
    const [, first = '', second = '', year = ''] = numbered;
    const [monthFirst, dayFirst] = [dated(year, first, second), dated(year, second, first)];
    return order === 'month-first' ? [monthFirst, dayFirst] : [dayFirst, monthFirst];
  }
  const yearFirst = /^(\d{4})[./ -](\d{1,2})(?:[./ -](\d{1,2}))?(?:[ t]\d.*)?$/.exec(typed);
  if (yearFirst !== null) {
    const [, year = '', month = '', day] = yearFirst;
    return [dated(year, month, day)];
  }
  const monthAndYear = /^(\d{1,2})[./ -](\d{4})$/.exec(typed);
  if (monthAndYear !== null) return [dated(monthAndYear[2] ?? '', monthAndYear[1] ?? '')];
  return /^\d{4}$/.test(typed) ? [typed] : wordedCandidates(typed);
}

/** With the month as a word, by its first three letters, and the day before or after it. */
function wordedCandidates(typed: string): readonly string[] {
  const parts = typed.replace(/(\d)(?:st|nd|rd|th)\b/g, '$1').split(/[ ./-]+/);
  const month = parts.findIndex((part) => /^[a-z]{3,9}$/.test(part) && MONTHS.includes(part.slice(0, 3)));
  const numbers = parts.filter((_, at) => at !== month);
  if (month < 0 || numbers.length > 2 || !numbers.every((part) => /^\d{1,4}$/.test(part))) return [];
  const name = String(MONTHS.indexOf((parts[month] ?? '').slice(0, 3)) + 1);
  const [first = '', second] = numbers;
  if (second === undefined) return first.length === 4 || first.length === 2 ? [dated(first, name)] : [];
  return first.length === 4 ? [dated(first, name, second)] : [dated(second, name, first)];
}

function dated(year: string, month: string, day?: string): string {
  const whole = year.length === 2 ? `20${year}` : year;
  return [whole, month.padStart(2, '0'), ...(day === undefined ? [] : [day.padStart(2, '0')])].join('-');
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  type CalendarDate,
  calendarDate,
  calendarDateFromParts,
  calendarDateFromText,
  calendarDateParts,
  compareDates,
  daysBetween,
  weekday,
} from '#core/units/calendar-date';
import { anyDate } from '#test/helpers/arbitraries';

const FIRST = calendarDate('0001-01-01');
const LAST = calendarDate('9999-12-31');
const DAY_IN_MILLISECONDS = 86_400_000;

describe('a calendar date', () => {
  it.each(['2027-02-28', '2028-02-29', '2000-02-29', '0001-01-01', '9999-12-31', '2027-12-31'])(
    '%s exists',
    (text) => {
      expect(calendarDateFromText(text)).toEqual({ ok: true, value: text });
      expect(calendarDateFromParts(calendarDateParts(calendarDate(text)))).toBe(text);
    },
  );

  it.each([
    '2027-02-29',
    '1900-02-29',
    '2027-04-31',
    '2027-13-01',
    '2027-00-10',
    '2027-01-00',
    '2027-01-32',
    '0000-01-01',
  ])('%s is no day', (text) => {
    expect(calendarDateFromText(text)).toEqual({ ok: false, error: { code: 'no-such-day', read: text } });
    expect(() => calendarDate(text)).toThrow(RangeError);
  });

  it.each([
    '',
    '2027-2-3',
    '27-02-03',
    '2027-02-03 ',
    '2027-02-03T00:00',
    '+2027-02-03',
    '2027/02/03',
    '٢٠٢٧-٠٢-٠٣',
    '2027-02-03\n',
  ])('%j is not of its form', (text) => {
    expect(calendarDateFromText(text)).toMatchObject({ ok: false, error: { code: 'not-a-date' } });
  });

  it('that is ten million characters long is refused, with the start of what was read', () => {
    const date = calendarDateFromText('1'.repeat(10_000_000));
    expect(date).toEqual({ ok: false, error: { code: 'not-a-date', read: '1'.repeat(40) } });
  });

  it('cannot leave the calendar, or move by part of a day', () => {
    expect(() => addDays(LAST, 1)).toThrow(RangeError);
    expect(() => addDays(FIRST, -1)).toThrow(RangeError);
    expect(() => addDays(FIRST, Number.MAX_SAFE_INTEGER)).toThrow(RangeError);
    expect(() => addDays(FIRST, 0.5)).toThrow(RangeError);
    expect(() => addDays(FIRST, NaN)).toThrow(RangeError);
    expect(() => calendarDateFromParts({ year: 2027, month: 2, day: 30 })).toThrow(RangeError);
  });
});

describe('calendar arithmetic', () => {
  it('moves there and back, and by what lies between', () => {
    fc.assert(
      fc.property(anyDate, anyDate, (from, to) => {
        const days = daysBetween(from, to);
        expect(addDays(from, days)).toBe(to);
        expect(addDays(to, -days)).toBe(from);
        expect(Math.sign(compareDates(from, to))).toBe(from < to ? -1 : from > to ? 1 : 0);
      }),
      { numRuns: 1000 },
    );
  });

  it('passes every day of 400 years once, a week having seven', () => {
    let date = calendarDate('1899-12-31');
    for (let day = 1; day <= 146_097; day += 1) {
      const next = addDays(date, 1);
      if (next <= date || daysBetween(date, next) !== 1 || weekday(next) !== (weekday(date) % 7) + 1)
        expect.fail(next);
      date = next;
    }
    expect(date).toBe('2299-12-31');
  });
});

// The check is the platform's own calendar in UTC; local midnights stand in calendar-date.zones.test.ts.
describe('against the platform', () => {
  function utcOf(date: CalendarDate): number {
    return Date.parse(`${date}T00:00:00Z`);
  }

  it('agrees on days between and weekdays from year 1 to 9999', () => {
    fc.assert(
      fc.property(anyDate, anyDate, (from, to) => {
        expect(daysBetween(from, to)).toBe((utcOf(to) - utcOf(from)) / DAY_IN_MILLISECONDS);
        expect(weekday(from) % 7).toBe(new Date(utcOf(from)).getUTCDay());
      }),
      { numRuns: 2000 },
    );
  });

  it('agrees on every day from 1600 to 2400', () => {
    const start = calendarDate('1600-01-01');
    const utc = utcOf(start);
    const days = daysBetween(start, calendarDate('2400-12-31'));
    for (let day = 0; day <= days; day += 1) {
      const theirs = new Date(utc + day * DAY_IN_MILLISECONDS).toISOString().slice(0, 10);
      if (addDays(start, day) !== theirs) expect.fail(theirs);
    }
  });
});

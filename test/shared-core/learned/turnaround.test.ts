import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isWellLearned, learnedFrom } from '#core/learned/learned';
import { type TripDays, learnedTurnaround, turnaroundOf } from '#core/learned/turnaround';
import { addDays, calendarDate } from '#core/units/calendar-date';

const START = calendarDate('2027-01-04');
const trip = (packageId: string, days: number | null): TripDays => ({
  packageId,
  sentOn: START,
  backOn: days === null ? null : addDays(START, days),
});
const trips = (...days: readonly number[]) => days.map((count, at) => trip(`p${at}`, count));

describe('what is learned from past cases', () => {
  it('is the median and the quartiles, interpolated between two cases', () => {
    expect(learnedFrom([40, 10, 20, 30])).toEqual({ count: 4, median: 25, low: 17.5, high: 32.5 });
    expect(learnedFrom([7])).toEqual({ count: 1, median: 7, low: 7, high: 7 });
    expect(learnedFrom([])).toBeNull();
  });

  it('is used from three cases on', () => {
    expect([0, 1, 2, 3, 4].map((count) => isWellLearned(learnedFrom(Array<number>(count).fill(5))))).toEqual([
      false,
      false,
      false,
      true,
      true,
    ]);
  });

  it('has at most half of the cases on either side of the median, in any order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 40 }), (cases) => {
        const learned = learnedFrom(cases)!;
        expect(learned.low).toBeLessThanOrEqual(learned.median);
        expect(learned.median).toBeLessThanOrEqual(learned.high);
        expect(cases.filter((one) => one < learned.median).length).toBeLessThanOrEqual(cases.length / 2);
        expect(cases.filter((one) => one > learned.median).length).toBeLessThanOrEqual(cases.length / 2);
        expect(learnedFrom(cases.toReversed())).toEqual(learned);
      }),
    );
  });
});

describe('the turnaround of a contact', () => {
  it('is learned from trips that ended, and a shared package counts once', () => {
    expect(learnedTurnaround([...trips(30, 40), trip('p0', 30), trip('open', null)])).toMatchObject({
      count: 2,
      median: 35,
    });
    expect(learnedTurnaround([trip('p0', 30), trip('p0', 36)])).toMatchObject({ count: 2, median: 33 });
    expect(learnedTurnaround([{ packageId: 'p', sentOn: null, backOn: START }])).toBeNull();
  });

  it('is the promised days, or the usual days, until three trips have ended', () => {
    expect(turnaroundOf({ promisedDays: 21 }, trips(30, 40), 28)).toMatchObject({
      days: 21,
      from: 'promised',
    });
    expect(turnaroundOf({ promisedDays: null }, trips(30, 40), 28)).toMatchObject({
      days: 28,
      from: 'usual',
    });
    expect(turnaroundOf({ promisedDays: 21 }, trips(30, 40, 37, 34), 28)).toMatchObject({
      days: 36,
      from: 'learned',
      learned: { count: 4, median: 35.5 },
    });
  });
});

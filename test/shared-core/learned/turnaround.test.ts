import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isWellLearned, learnedFrom } from '#core/learned/learned';
import { type Journey, learnedTurnaround, turnaroundOf } from '#core/learned/turnaround';
import { addDays, calendarDate } from '#core/units/calendar-date';

const START = calendarDate('2027-01-04');
const journey = (packageId: string, days: number | null): Journey => ({
  packageId,
  sentOn: START,
  backOn: days === null ? null : addDays(START, days),
});
const journeys = (...days: readonly number[]) => days.map((count, at) => journey(`p${at}`, count));

describe('what is learned from past cases', () => {
  it('is their median and the middle half of them, between two cases in proportion', () => {
    expect(learnedFrom([40, 10, 20, 30])).toEqual({ count: 4, median: 25, low: 17.5, high: 32.5 });
    expect(learnedFrom([7])).toEqual({ count: 1, median: 7, low: 7, high: 7 });
    expect(learnedFrom([])).toBeNull();
  });

  it('is trusted from three cases on', () => {
    expect([0, 1, 2, 3, 4].map((count) => isWellLearned(learnedFrom(Array<number>(count).fill(5))))).toEqual([
      false,
      false,
      false,
      true,
      true,
    ]);
  });

  it('has half of the cases on either side of the median, whatever they are and in whatever order', () => {
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

describe('the turn-around of somebody', () => {
  it('is learned from trips that ended; what came and went in one package counts once', () => {
    expect(learnedTurnaround([...journeys(30, 40), journey('p0', 30), journey('open', null)])).toMatchObject({
      count: 2,
      median: 35,
    });
    expect(learnedTurnaround([journey('p0', 30), journey('p0', 36)])).toMatchObject({ count: 2, median: 33 });
    expect(learnedTurnaround([{ packageId: 'p', sentOn: null, backOn: START }])).toBeNull();
  });

  it('goes by what they promise, or by what is usual, until three trips tell better', () => {
    expect(turnaroundOf({ promisedDays: 21 }, journeys(30, 40), 28)).toMatchObject({
      days: 21,
      from: 'promised',
    });
    expect(turnaroundOf({ promisedDays: null }, journeys(30, 40), 28)).toMatchObject({
      days: 28,
      from: 'usual',
    });
    expect(turnaroundOf({ promisedDays: 21 }, journeys(30, 40, 37, 34), 28)).toMatchObject({
      days: 36,
      from: 'learned',
      learned: { count: 4, median: 35.5 },
    });
  });
});

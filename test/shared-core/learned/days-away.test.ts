import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stageIdSchema } from '#core/domain/ids';
import { daysAway, daysAwayUnnamed, type ContactWithTrips } from '#core/learned/days-away';
import { addDays, calendarDate } from '#core/units/calendar-date';

const STAGE = stageIdSchema.parse('00000000-0000-4000-8000-000000000001');
const START = calendarDate('2027-02-01');
const USUAL = 28;

function contact(promisedDays: number | null, ...tookDays: readonly number[]): ContactWithTrips {
  return {
    details: { name: 'Tansy Quill', promisedDays },
    trips: tookDays.map((days, index) => ({
      packageId: `package ${String(index)}`,
      sentOn: addDays(START, 40 * index),
      backOn: addDays(START, 40 * index + days),
    })),
  };
}

describe('how long a top is away once it is sent', () => {
  it('is the workshop’s usual days when nobody is booked and no quilter’s days are known', () => {
    const usual = { days: USUAL, from: 'usual', withWhom: null };
    expect(daysAwayUnnamed(STAGE, [], USUAL)).toMatchObject(usual);
    expect(daysAwayUnnamed(STAGE, [contact(null), contact(null, 12)], USUAL)).toMatchObject(usual);
  });

  it('is what the quilters on record take when nobody is booked: the only one, or the middle one of several', () => {
    const days = (...quilters: readonly ContactWithTrips[]) => {
      const away = daysAwayUnnamed(STAGE, quilters, USUAL);
      return [away.days, away.from, away.withWhom];
    };
    expect(days(contact(14), contact(null))).toEqual([14, 'quilters', 'Tansy Quill']);
    expect(days(contact(14, 30, 41, 33))).toEqual([33, 'quilters', 'Tansy Quill']);
    expect(days(contact(21), contact(14))).toEqual([21, 'quilters', null]);
    expect(days(contact(40), contact(14), contact(21))).toEqual([21, 'quilters', null]);
  });

  it('is the median of past trips from three on, before that the promised days, and the usual days without a promise', () => {
    const booked = { sentOn: null, promisedOn: null };
    const days = (who: ContactWithTrips) => {
      const away = daysAway(STAGE, booked, who, USUAL);
      return [away.days, away.from, away.withWhom];
    };
    expect(days(contact(18, 30, 41, 33))).toEqual([33, 'learned', 'Tansy Quill']);
    expect(days(contact(18, 30, 41))).toEqual([18, 'promised', 'Tansy Quill']);
    expect(days(contact(null, 30))).toEqual([USUAL, 'usual', 'Tansy Quill']);
  });

  it('is taken from the trip itself when both its days are entered', () => {
    const trip = { sentOn: START, promisedOn: addDays(START, 12) };
    expect(daysAway(STAGE, trip, contact(18, 30, 41, 33), USUAL)).toMatchObject({ days: 12, from: 'trip' });
    expect(daysAway(STAGE, { ...trip, promisedOn: null }, contact(18), USUAL).from).toBe('promised');
    const before = { sentOn: START, promisedOn: addDays(START, -3) };
    expect(daysAway(STAGE, before, contact(18), USUAL).days).toBe(0);
  });

  it('stays between the shortest and the longest past trip once it is learned, whatever was promised', () => {
    const took = fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(took, fc.option(fc.nat(400)), fc.nat(400), (all, promised, usual) => {
        const { days, from } = daysAway(STAGE, undefined, contact(promised, ...all), usual);
        expect(from).toBe('learned');
        expect(Number.isInteger(days)).toBe(true);
        expect(days).toBeGreaterThanOrEqual(Math.min(...all));
        expect(days).toBeLessThanOrEqual(Math.max(...all));
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { nameAlone } from '#core/domain/contact';
import { contactIdSchema } from '#core/domain/ids';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { compareQuilters, orderOffers, type Quilter } from '#core/learned/compare-quilters';
import { addDays, calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';

const SENT = calendarDate('2027-03-01');
const ask = {
  measurements: {
    outline: { shape: 'rectangle', width: lengthFromInches(50), length: lengthFromInches(60) },
    hole: null,
    hasSlit: false,
    settings: { ...STARTING_SETTINGS, longarmRateMinor: 2, longarmMinimumMinor: 1_000, turnaroundDays: 28 },
  },
  sentOn: SENT,
  wantedOn: addDays(SENT, 30),
} as const;

let made = 0;
const quilter = (
  details: Partial<Quilter['details']> & { readonly name: string },
  days: readonly number[] = [],
): Quilter => {
  made += 1;
  return {
    id: contactIdSchema.parse(`00000000-0000-4000-8000-00000000000${made}`),
    details: { ...nameAlone(details.name, 'longarm'), ...details },
    trips: days.map((count, at) => ({ packageId: `p${at}`, sentOn: SENT, backOn: addDays(SENT, count) })),
  };
};

const cheap = quilter({ name: 'Slow and cheap', rateMinor: 1.5, minimumMinor: 0 }, [40, 50, 60, 44]);
const dear = quilter({
  name: 'Quick and dear',
  rateMinor: 3,
  lines: [{ by: 'flat', name: 'Thread', amount: 500 }],
  promisedDays: 14,
});
const unknown = quilter({ name: 'Never asked' });
const [slow, quick, asked] = compareQuilters([cheap, dear, unknown], ask);

describe('comparing quilters for one project', () => {
  // 50 1/2 × 60 1/2 with its seam allowance, up to 51 × 61 = 3,111 square inches, billed at the rate of each (common practice: area by rate, with lines beside it).
  it('prices each by their own rate and lines, or by the workshop’s rate when they have none', () => {
    expect([slow, quick, asked].map((offer) => [offer?.priceMinor, offer?.isOwnRate])).toEqual([
      [4_667, true],
      [9_833, true],
      [6_222, false],
    ]);
  });

  it('predicts the return from past trips, with their upper quartile beside it', () => {
    expect(slow).toMatchObject({
      turnaround: { days: 47, from: 'learned' },
      backOn: addDays(SENT, 47),
      lateBackOn: addDays(SENT, 53),
      isInTime: false,
    });
    expect(quick).toMatchObject({ backOn: addDays(SENT, 14), lateBackOn: addDays(SENT, 14), isInTime: true });
    expect(asked).toMatchObject({ turnaround: { days: 28, from: 'usual' }, isInTime: true });
  });

  it('sorts by price or by day, and calls nobody late when no day is asked for', () => {
    const names = (by: 'price' | 'day') => orderOffers([slow!, quick!, asked!], by).map(({ name }) => name);
    expect(names('price')).toEqual(['Slow and cheap', 'Never asked', 'Quick and dear']);
    expect(names('day')).toEqual(['Quick and dear', 'Never asked', 'Slow and cheap']);
    expect(compareQuilters([cheap], { ...ask, wantedOn: null })[0]).toMatchObject({ isInTime: null });
  });

  it('never bills less than the minimum', () => {
    const least = quilter({ name: 'Least', rateMinor: 1, minimumMinor: 8_000 });
    expect(compareQuilters([least], ask)[0]).toMatchObject({ priceMinor: 8_000, isAtMinimum: true });
  });
});

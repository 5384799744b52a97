import { describe, expect, it } from 'vitest';
import { NO_COST } from '#core/units/known-cost';
import { type MonthSums, stashMonths } from '#core/stash/stash-months';
import { calendarDate } from '#core/units/calendar-date';

const known = (minor: number) => ({ minor, unpricedArea: 0 });
const part = { bought: known(7), boughtArea: 8, used: known(5), usedArea: 6 };
const booked = (month: string, minor: number, unpricedArea = 0): MonthSums => ({
  ...part,
  month,
  change: { minor, unpricedArea },
});

describe('the months of a stash', () => {
  it('include months without bookings, across the turn of a year', () => {
    const nothing = { bought: NO_COST, boughtArea: 0, used: NO_COST, usedArea: 0 };
    const months = stashMonths([booked('2026-12', 30)], calendarDate('2027-01-15'), 3);
    expect(months).toEqual([
      { ...nothing, month: '2026-11', value: NO_COST },
      { ...part, month: '2026-12', value: known(30) },
      { ...nothing, month: '2027-01', value: known(30) },
    ]);
  });

  it('start with the value of all earlier bookings, and leave out later months', () => {
    const sums = [booked('2024-03', 500), booked('2026-01', -200), booked('2027-03', 900)];
    const values = stashMonths(sums, calendarDate('2027-02-28'), 2).map(({ value }) => value.minor);
    expect(values).toEqual([300, 300]);
  });

  it('start with what was bought in no known month, and carry on what has no price', () => {
    const sums = [booked('', 100, 4), booked('2027', 20), booked('2027-01', -30, -1), booked('2027-02', 5)];
    const values = stashMonths(sums, calendarDate('2027-02-28'), 2).map(({ value }) => value);
    expect(values).toEqual([
      { minor: 90, unpricedArea: 3 },
      { minor: 95, unpricedArea: 3 },
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { type MonthSums, stashMonths } from '#core/stash/stash-months';
import { calendarDate } from '#core/units/calendar-date';

const booked = (month: string, valueChange: number): MonthSums => ({
  ...{ month, valueChange, boughtMinor: 7, boughtArea: 8, usedMinor: 5, usedArea: 6 },
});

describe('the months of a stash', () => {
  it('include months without bookings, across the turn of a year', () => {
    const months = stashMonths([booked('2026-12', 30)], calendarDate('2027-01-15'), 3);
    expect(months).toEqual([
      { month: '2026-11', boughtMinor: 0, boughtArea: 0, usedMinor: 0, usedArea: 0, valueMinor: 0 },
      { month: '2026-12', boughtMinor: 7, boughtArea: 8, usedMinor: 5, usedArea: 6, valueMinor: 30 },
      { month: '2027-01', boughtMinor: 0, boughtArea: 0, usedMinor: 0, usedArea: 0, valueMinor: 30 },
    ]);
  });

  it('start with the value of all earlier bookings, and leave out later months', () => {
    const sums = [booked('2024-03', 500), booked('2026-01', -200), booked('2027-03', 900)];
    const values = stashMonths(sums, calendarDate('2027-02-28'), 2).map(({ valueMinor }) => valueMinor);
    expect(values).toEqual([300, 300]);
  });
});

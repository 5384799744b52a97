import type { StashMonth } from '#core/domain/stash-numbers';
import { addCosts, type KnownCost, NO_COST } from '#core/units/known-cost';
import { calendarDateParts, type CalendarDate } from '#core/units/calendar-date';
import { roundDownTo } from '#core/units/rounding';

/**
 * The sums of a month's bookings; `change` is the change of the stash's value in that month. What was bought in a year has the year as its
 * month, and what was bought when is not known an empty one.
 */
export interface MonthSums extends Omit<StashMonth, 'value'> {
  readonly change: KnownCost;
}

const NO_BOOKINGS = { bought: NO_COST, boughtArea: 0, used: NO_COST, usedArea: 0 };

/**
 * The `count` months up to the month of `today`, oldest first, including months without bookings. Bookings that are earlier, or
 * of no known month, are part of the first month's value; bookings for later months are left out.
 */
export function stashMonths(
  sums: readonly MonthSums[],
  today: CalendarDate,
  count: number,
): readonly StashMonth[] {
  const { year, month } = calendarDateParts(today);
  const first = year * 12 + month - count;
  const byMonth = new Map(sums.map((one) => [one.month, one]));
  const earlier = sums.filter(({ month: name }) => name.length < 7 || name < monthName(first));
  let value = addCosts(earlier.map(({ change }) => change));
  return Array.from({ length: count }, (_month, index) => {
    const name = monthName(first + index);
    const { change = NO_COST, ...booked } = byMonth.get(name) ?? {};
    value = addCosts([value, change]);
    return { ...NO_BOOKINGS, ...booked, month: name, value };
  });
}

/** The month `months` after January of year 0, as `2027-02`. */
function monthName(months: number): string {
  const yearsInMonths = roundDownTo(months, 12);
  return [
    String(yearsInMonths / 12).padStart(4, '0'),
    String(months - yearsInMonths + 1).padStart(2, '0'),
  ].join('-');
}

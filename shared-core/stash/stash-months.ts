import type { StashMonth } from '#core/domain/stash-numbers';
import { calendarDateParts, type CalendarDate } from '#core/units/calendar-date';
import { roundDownTo } from '#core/units/rounding';

/** The sums of a month's bookings; `valueChange` is the change of the stash's value in that month. */
export interface MonthSums extends Omit<StashMonth, 'valueMinor'> {
  readonly valueChange: number;
}

const NO_BOOKINGS = { boughtMinor: 0, boughtArea: 0, usedMinor: 0, usedArea: 0 };

/**
 * The `count` months up to the month of `today`, oldest first, including months without bookings. Earlier bookings are part of
 * the first month's value; bookings for later months are left out.
 */
export function stashMonths(
  sums: readonly MonthSums[],
  today: CalendarDate,
  count: number,
): readonly StashMonth[] {
  const { year, month } = calendarDateParts(today);
  const first = year * 12 + month - count;
  const byMonth = new Map(sums.map((one) => [one.month, one]));
  let valueMinor = sums
    .filter((one) => one.month < monthName(first))
    .reduce((sum, { valueChange }) => sum + valueChange, 0);
  return Array.from({ length: count }, (_month, index) => {
    const name = monthName(first + index);
    const { valueChange = 0, ...booked } = byMonth.get(name) ?? {};
    valueMinor += valueChange;
    return { ...NO_BOOKINGS, ...booked, month: name, valueMinor };
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

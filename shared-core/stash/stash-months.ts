import type { StashMonth } from '#core/domain/stash-insight';
import { calendarDateParts, type CalendarDate } from '#core/units/calendar-date';
import { roundDownTo } from '#core/units/rounding';

/** What a month's bookings add up to; `valueChange` is by how much the value on the shelf rose. */
export interface MonthSums extends Omit<StashMonth, 'valueMinor'> {
  readonly valueChange: number;
}

const NOTHING = { boughtMinor: 0, boughtArea: 0, usedMinor: 0, usedArea: 0 };

/**
 * The `count` months up to the one of `today`, the oldest first, each there even where nothing was booked in it. What was
 * booked before them is in the value they begin with; what is booked for a later month is left out.
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
  return Array.from({ length: count }, (_none, index) => {
    const name = monthName(first + index);
    const { valueChange = 0, ...booked } = byMonth.get(name) ?? {};
    valueMinor += valueChange;
    return { ...NOTHING, ...booked, month: name, valueMinor };
  });
}

/** `2027-02` for the month that many months after January of the year 0. */
function monthName(months: number): string {
  const yearsInMonths = roundDownTo(months, 12);
  return [
    String(yearsInMonths / 12).padStart(4, '0'),
    String(months - yearsInMonths + 1).padStart(2, '0'),
  ].join('-');
}

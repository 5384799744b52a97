import type { DayMoves, DateFixes, PlannedDates } from '#core/contract/dates';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Reading, useRead } from './query';

/** Nothing is moved: the days as they are kept. */
export const NO_MOVES: DayMoves = { dues: [], promises: [] };

/** When everything will be done, worked out anew after every change; with moves, what would come of them. */
export function usePlannedDates(on: CalendarDate, moves: DayMoves = NO_MOVES): Reading<PlannedDates> {
  return useRead('dates:plan', { on, moves }, { keepsPrevious: true });
}

/** What would bring everything in time; asked only where something is late. */
export function useMending(on: CalendarDate, moves: DayMoves, isLate: boolean): DateFixes | undefined {
  return useRead('dates:suggest-fixes', { on, moves }, { keepsPrevious: true, isOn: isLate }).value;
}

import type { DayMoves, DateFixes, PlannedDates } from '#core/contract/dates';
import type { ProjectChance } from '#core/planner/schedule';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Reading, useRead } from './query';

/** No day is moved: the saved days. */
export const NO_MOVES: DayMoves = { dues: [], promises: [] };

/** The schedule of all open projects, worked out again after every change; with `moves`, as it would be then. */
export function usePlannedDates(on: CalendarDate, moves: DayMoves = NO_MOVES): Reading<PlannedDates> {
  return useRead('dates:plan', { on, moves }, { keepsPrevious: true });
}

/** What would get everything done on time; asked only if something is late. */
export function useDateFixes(on: CalendarDate, moves: DayMoves, isLate: boolean): DateFixes | undefined {
  return useRead('dates:suggest-fixes', { on, moves }, { keepsPrevious: true, isOn: isLate }).value;
}

/** How sure the dates of all open projects are, with the saved days. */
export function useDateChances(on: CalendarDate): readonly ProjectChance[] {
  return useRead('dates:chances', { on, moves: NO_MOVES }, { keepsPrevious: true }).value ?? [];
}

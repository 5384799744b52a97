import { z } from 'zod';
import { calendarDate } from '#core/domain/dates';
import { projectId, tripId } from '#core/domain/ids';
import type { DaysAway } from '#core/learned/days-away';
import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import type { Schedule, WeekLoad } from '#core/planner/schedule';
import type { CalendarDate } from '#core/units/calendar-date';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** Days moved to other ones: those on which pieces are due, and those for which they were promised back. */
export const dayMoves = z
  .object({
    dues: z
      .array(z.object({ projectId, dueOn: calendarDate }).readonly())
      .max(500)
      .readonly(),
    promises: z
      .array(z.object({ tripId, promisedOn: calendarDate }).readonly())
      .max(500)
      .readonly(),
  })
  .readonly();
export type DayMoves = z.infer<typeof dayMoves>;

/** When everything will be done with the days as they are, or as they would be moved. */
export interface PlannedDates {
  /** Without its single sessions of work, which are many and which nobody looks at one by one. */
  readonly plan: Omit<Schedule, 'sessions'>;
  readonly weeks: readonly WeekLoad[];
  /** Of every stage that goes out or is out: how long it is away, and whose figure that is. */
  readonly away: readonly DaysAway[];
}

/** What would bring everything in time. */
export interface Mending {
  /** Minutes a week more at the bench that would do for all that hours can help; null where none would. */
  readonly extraWeekMinutes: number | null;
  /** Pieces that are late whatever the hours. */
  readonly beyondHours: readonly string[];
  /** Due days that would do in place of hours. */
  readonly moved: readonly { readonly id: string; readonly dueOn: CalendarDate }[];
}

const question = z.object({ on: calendarDate, moves: dayMoves });

export const dateChannels = {
  /** `on` is today; the moves are only supposed, nothing is kept. */
  'dates:plan': reads<PlannedDates>()(question),
  /** To be asked where something is late: it tries many plans. */
  'dates:mend': reads<Mending>()(question),
  /** The days that other calendars may want to know of, in their order. */
  'dates:remember': reads<readonly DayToRemember[]>()(z.object({ on: calendarDate })),
  /** Keeps the moves, all of them as one change. */
  'dates:move': writes<Changed>()(z.object({ moves: dayMoves })),
};

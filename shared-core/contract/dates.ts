import { z } from 'zod';
import { calendarDateSchema } from '#core/domain/dates';
import { projectIdSchema, stagePlanIdSchema, tripIdSchema } from '#core/domain/ids';
import { projectDetailsSchema } from '#core/domain/project';
import type { DaysAway } from '#core/learned/days-away';
import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import type { ProjectChance, ProjectDates, Schedule, WeekLoad } from '#core/planner/schedule';
import type { CalendarDate } from '#core/units/calendar-date';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** Due days and promised days, moved to other days. */
const dayMovesSchema = z
  .object({
    dues: z
      .array(z.object({ projectId: projectIdSchema, dueOn: calendarDateSchema }).readonly())
      .max(500)
      .readonly(),
    promises: z
      .array(z.object({ tripId: tripIdSchema, promisedOn: calendarDateSchema }).readonly())
      .max(500)
      .readonly(),
  })
  .readonly();
export type DayMoves = z.infer<typeof dayMovesSchema>;

/** When everything will be done, with the days as they are or as they would be moved. */
export interface PlannedDates {
  /** Without its sessions of work: they are many, and no page shows them. */
  readonly plan: Omit<Schedule, 'sessions'>;
  readonly weeks: readonly WeekLoad[];
  /** For every stage that goes to a quilter or is there: how long it is away, and where that figure comes from. */
  readonly away: readonly DaysAway[];
}

/** What would get everything done on time. */
export interface DateFixes {
  /** Extra minutes a week that would be enough for every project that more hours can help; null if no number is. */
  readonly extraWeekMinutes: number | null;
  /** Projects that are late no matter how many hours are added. */
  readonly beyondHours: readonly string[];
  /** Due days that would work instead of more hours. */
  readonly moved: readonly { readonly id: string; readonly dueOn: CalendarDate }[];
}

/** When a project would be done if it were started today, beside everything that is open. */
export interface TriedProject {
  readonly dates: ProjectDates;
  /** Open projects that it would make late, or later than they are. */
  readonly madeLater: readonly { readonly name: string; readonly lateDays: number }[];
  /** What would help if it is late; null if it is in time. */
  readonly fixes: DateFixes | null;
  readonly chance: ProjectChance;
  /** The name of the stage that the doubt comes from most. */
  readonly doubtfulStageName: string | null;
}

const question = z.object({ on: calendarDateSchema, moves: dayMovesSchema });

export const dateChannels = {
  /** `on` is today. The moves are only tried out; nothing is saved. */
  'dates:plan': reads<PlannedDates>()(question),
  /** How sure the dates of each open project are, from sampled futures of the whole workshop. */
  'dates:chances': reads<readonly ProjectChance[]>()(question),
  /** For schedules where something is late. Slow, because it tries many schedules. */
  'dates:suggest-fixes': reads<DateFixes>()(question),
  /** Nothing is saved. */
  'dates:try-project': reads<TriedProject>()(
    z.object({ on: calendarDateSchema, details: projectDetailsSchema, stagePlanId: stagePlanIdSchema }),
  ),
  /** The days for other calendars, in order. */
  'dates:days-to-remember': reads<readonly DayToRemember[]>()(z.object({ on: calendarDateSchema })),
  /** Saves all moves as one change. */
  'dates:move': writes<Changed>()(z.object({ moves: dayMovesSchema })),
};

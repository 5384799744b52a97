import { z } from 'zod';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Minutes, minutesFromWhole } from '#core/units/minutes';
import { roundNearest } from '#core/units/rounding';
import { calendarDateSchema } from './dates';
import type { ProjectId, StageId, WorkId } from './ids';

/** What can be counted in a work session: blocks sewn, length sewn by hand (in 1/320 mm), cuts made. */
export const workMeasureSchema = z.enum(['blocks', 'hand', 'cuts']);
export type WorkMeasure = z.infer<typeof workMeasureSchema>;

export const workDoneSchema = z
  .object({ what: workMeasureSchema, amount: z.int().min(1).max(1_000_000_000) })
  .readonly();
export type WorkDone = z.infer<typeof workDoneSchema>;

/** A work session as the maker enters it; `done` is null when nothing was counted. */
export const workDetailsSchema = z
  .object({
    on: calendarDateSchema,
    minutes: z.int().min(1).max(100_000),
    done: workDoneSchema.nullable(),
    note: z.string().trim().max(300),
  })
  .readonly();
export type WorkDetails = z.infer<typeof workDetailsSchema>;

export interface Work extends WorkDetails {
  readonly id: WorkId;
  readonly stageId: StageId;
  /** UTC milliseconds; null for a session entered by hand. */
  readonly startedAt: number | null;
}

/** The running clock; only one can run. */
export interface RunningClock {
  readonly id: WorkId;
  readonly stageId: StageId;
  readonly stageName: string;
  readonly projectId: ProjectId;
  readonly projectName: string;
  readonly startedAt: number;
  readonly startedOn: CalendarDate;
}

const MINUTE_MS = 60_000;
const LONGEST_MS = 8 * 60 * MINUTE_MS;

/** Whole minutes a clock shows, rounded down; 0 when the system clock was set back. */
export function clockMinutes(startedAt: number, now: number): Minutes {
  return minutesFromWhole(Math.max(0, Math.floor((now - startedAt) / MINUTE_MS)));
}

/** Minutes to log, rounded to the nearest `step`, at least one step. */
export function roundedMinutes(minutes: number, step: number): Minutes {
  return minutesFromWhole(Math.max(step, roundNearest(minutes, step)));
}

/** Why a running clock looks forgotten: it ran for more than eight hours, or overnight; null when it does not. */
export function forgottenWhy(
  { startedAt, startedOn }: Pick<RunningClock, 'startedAt' | 'startedOn'>,
  now: number,
  today: CalendarDate,
): 'long' | 'overnight' | null {
  if (startedOn < today) return 'overnight';
  return now - startedAt > LONGEST_MS ? 'long' : null;
}

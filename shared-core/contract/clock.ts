import { z } from 'zod';
import { type RunningClock, type Work, workDetailsSchema, workDoneSchema } from '#core/domain/clock';
import { stageIdSchema, workIdSchema, type WorkId } from '#core/domain/ids';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** Logged time with what was counted in it. */
export interface CountedWork {
  readonly minutes: number;
  readonly done: Work['done'];
}

export const clockChannels = {
  'clock:state': reads<RunningClock | null>()(z.object({})),
  /**
   * Starts the clock on a stage. A planned stage is started too, which a closed gate refuses. A clock that runs on another stage is
   * stopped and its time saved.
   */
  'clock:start': writes<Changed & { readonly workId: WorkId }>()(z.object({ stageId: stageIdSchema })),
  /** Stops the running clock. Saves `minutes` if given, otherwise the time it ran, rounded as the settings say. */
  'clock:stop': writes<Changed>()(
    z.object({
      minutes: z.int().min(1).max(100_000).optional(),
      done: workDoneSchema.nullable(),
      note: z.string().trim().max(300),
    }),
  ),
  /** The time logged on a stage, by day, without the running clock. */
  'work:of-stage': reads<readonly Work[]>()(z.object({ stageId: stageIdSchema })),
  /** All logged time in which something was counted. */
  'work:counted': reads<readonly CountedWork[]>()(z.object({})),
  'work:add': writes<Changed & { readonly workId: WorkId }>()(
    z.object({ stageId: stageIdSchema, details: workDetailsSchema }),
  ),
  'work:change': writes<Changed>()(z.object({ workId: workIdSchema, details: workDetailsSchema })),
  /** Deletes logged time, or the running clock without saving its time. */
  'work:delete': writes<Changed>()(z.object({ workId: workIdSchema })),
};

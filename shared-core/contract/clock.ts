import { z } from 'zod';
import { type RunningClock, type Work, workDetails, workDone } from '#core/domain/clock';
import { stageId, workId, type WorkId } from '#core/domain/ids';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** A stretch of work with what was counted in it. */
export interface CountedWork {
  readonly minutes: number;
  readonly done: Work['done'];
}

export const clockChannels = {
  'clock:state': reads<RunningClock | null>()(z.object({})),
  /**
   * Starts the clock on a stage, which begins if it was only planned (a closed gate refuses that). A clock that runs on another
   * stage is stopped and its time kept.
   */
  'clock:start': writes<Changed & { readonly workId: WorkId }>()(z.object({ stageId })),
  /** Stops the running clock: with `minutes` these are kept, else the time it ran, rounded by setting. */
  'clock:stop': writes<Changed>()(
    z.object({
      minutes: z.int().min(1).max(100_000).optional(),
      done: workDone.nullable(),
      note: z.string().trim().max(300),
    }),
  ),
  /** The work of a stage by its days, the running clock left out. */
  'work:of-stage': reads<readonly Work[]>()(z.object({ stageId })),
  /** All work in which something was counted. */
  'work:counted': reads<readonly CountedWork[]>()(z.object({})),
  'work:add': writes<Changed & { readonly workId: WorkId }>()(z.object({ stageId, details: workDetails })),
  'work:change': writes<Changed>()(z.object({ workId, details: workDetails })),
  /** Strikes out a stretch of work; of the running clock it throws the time away. */
  'work:remove': writes<Changed>()(z.object({ workId })),
};

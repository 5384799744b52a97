import { z } from 'zod';
import { keptPlanSchema, type KeptPlan, type TickedStep } from '#core/domain/cutting-plan';
import { calendarDateSchema } from '#core/domain/dates';
import { fabricPieceIdSchema, projectIdSchema } from '#core/domain/ids';
import { reads, writes } from './channel';
import type { Changed } from './projects';
import { paid } from './stash';

/** The plan saved with a project. Whether it is out of date is worked out when it is shown, from the stash at that time. */
export interface CuttingPlanPage {
  readonly plan: KeptPlan;
  readonly savedAt: number;
  /** By piece, then in the order they were cut. */
  readonly ticked: readonly TickedStep[];
}

/** A cut of the plan: the piece, and the number of the cut among those of the piece. */
const step = { projectId: projectIdSchema, pieceId: fabricPieceIdSchema, place: z.int().min(0).max(5_000) };

export const cuttingChannels = {
  'cutting:open': reads<CuttingPlanPage | null>()(z.object({ projectId: projectIdSchema })),
  /** Saves a plan in place of an earlier one. The cuts booked by that one must come first in the new plan, unchanged. */
  'cutting:save': writes<Changed>()(z.object({ projectId: projectIdSchema, plan: keptPlanSchema })),
  /**
   * Books the fabric that the plan asks to buy, sets it aside for the project and lets the plan cut it, all in one change. `fabric` is the
   * plan's key for the fabric; `costMinor` is the price paid, null if it is
   * not known.
   */
  'cutting:buy': writes<Changed>()(
    z.object({
      projectId: projectIdSchema,
      fabric: z.string().min(1).max(200),
      costMinor: paid.costMinor,
      on: calendarDateSchema,
    }),
  ),
  'cutting:delete': writes<Changed>()(z.object({ projectId: projectIdSchema })),
  /**
   * Books a step, shared by the projects whose patches it gives, and its leftovers as new pieces, in one change. Only the next step of a
   * piece can be checked off. Refused as short-of-fabric like `ledger:cut`.
   */
  'cutting:tick': writes<Changed>()(z.object({ ...step, knowingly: z.boolean(), on: calendarDateSchema })),
  /** Undoes the last step of a piece that was checked off, with all its bookings. Refused if the fabric has been used since. */
  'cutting:untick': writes<Changed>()(z.object({ ...step, on: calendarDateSchema })),
};

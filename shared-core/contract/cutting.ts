import { z } from 'zod';
import { keptPlan, type KeptPlan, type TickedStep } from '#core/domain/cutting-plan';
import { calendarDate } from '#core/domain/dates';
import { fabricPieceId, projectId } from '#core/domain/ids';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** The plan kept with a project. Whether it is out of date is worked out when it is shown, from the stash as it is then. */
export interface CuttingPlanPage {
  readonly plan: KeptPlan;
  readonly keptAt: number;
  /** By piece, then in the order they were cut. */
  readonly ticked: readonly TickedStep[];
}

/** A cut of the plan: the piece, and its place among the steps of that piece. */
const step = { projectId, pieceId: fabricPieceId, place: z.int().min(0).max(5_000) };

export const cuttingChannels = {
  'cutting:open': reads<CuttingPlanPage | null>()(z.object({ projectId })),
  /** Keeps a plan in place of the one before. What that had cut already must stand first in the new one, as it was cut. */
  'cutting:keep': writes<Changed>()(z.object({ projectId, plan: keptPlan })),
  /**
   * Books what the plan says is to be bought of a fabric, named as the plan names it, at what was paid for it; sets it aside for
   * the project, and the plan cuts it from then on. All of it is one change.
   */
  'cutting:buy': writes<Changed>()(
    z.object({
      projectId,
      fabric: z.string().min(1).max(200),
      costMinor: z.int().min(0).max(100_000_000),
      on: calendarDate,
    }),
  ),
  'cutting:remove': writes<Changed>()(z.object({ projectId })),
  /**
   * Books what a step takes, shared among the projects whose patches it gives, and its leftovers as pieces of their own, in
   * one change. Only the next step of a piece can be ticked. Refused as short-of-fabric as `ledger:cut` is.
   */
  'cutting:tick': writes<Changed>()(z.object({ ...step, knowingly: z.boolean(), on: calendarDate })),
  /** Takes the last ticked step of a piece back with all it booked; refused when its fabric has been used since. */
  'cutting:untick': writes<Changed>()(z.object({ ...step, on: calendarDate })),
};

import { z } from 'zod';
import { checklistItemId, projectId, stageId } from './ids';

/** What is done in a stage; calculators attach to kinds. `other` is anything the maker adds. */
export const stageKind = z.enum([
  'piecing',
  'longarm',
  'home-quilting',
  'outer-binding',
  'center-cut',
  'inner-binding',
  'hand-finish',
  'other',
]);
export type StageKind = z.infer<typeof stageKind>;

/**
 * planned: not begun; in-hand: being worked on at the bench; out: away with somebody; done; skipped: this piece does not
 * need it. A stage that waits for something carries the reason in `heldUpBy`, whatever its state.
 */
export const stageState = z.enum(['planned', 'in-hand', 'out', 'done', 'skipped']);
export type StageState = z.infer<typeof stageState>;

/**
 * A line to tick off. A gate line must be ticked before its stage may start; `closedBy` names the kind of stage whose
 * completion ticks it.
 */
export const checklistItem = z
  .object({
    id: checklistItemId,
    text: z.string().trim().min(1).max(300),
    isGate: z.boolean(),
    closedBy: stageKind.nullable(),
    isTicked: z.boolean(),
  })
  .readonly();
export type ChecklistItem = z.infer<typeof checklistItem>;

export const stage = z
  .object({
    id: stageId,
    projectId,
    position: z.int().min(0),
    kind: stageKind,
    name: z.string().trim().min(1).max(120),
    state: stageState,
    estimateMinutes: z.int().min(0).max(100_000),
    /** The maker set the estimate herself; else it came with the plan, and her own rates go before it. */
    isOwnEstimate: z.boolean(),
    heldUpBy: z.string().trim().max(300),
    notes: z.string().max(20_000),
    /** Why the maker went past the gate with conditions open; empty when she did not. */
    gatePassedWhy: z.string().trim().max(1_000),
    startedAt: z.int().nullable(),
    finishedAt: z.int().nullable(),
    checklist: z.array(checklistItem).readonly(),
    /** May be worked on side by side with the stage before it. */
    isBeside: z.boolean(),
    /** The calculators that stand on its page, by name; null: those of its kind. */
    calculators: z.array(z.string()).readonly().nullable(),
  })
  .readonly();
export type Stage = z.infer<typeof stage>;

/** A stage as a stage plan describes it, before it belongs to a project. */
export const plannedStage = z
  .object({
    kind: stageKind,
    name: z.string().trim().min(1).max(120),
    estimateMinutes: z.int().min(0).max(100_000),
    checklist: z
      .array(
        z
          .object({
            text: z.string().trim().min(1).max(300),
            isGate: z.boolean(),
            closedBy: stageKind.nullable(),
          })
          .readonly(),
      )
      .readonly(),
    isBeside: z.boolean().optional(),
    calculators: z.array(z.string().max(60)).max(40).readonly().nullable().optional(),
  })
  .readonly();
export type PlannedStage = z.infer<typeof plannedStage>;

/** The stage the project stands at: the first that is neither done nor skipped; null when all are. */
export function currentStage<S extends Pick<Stage, 'state'>>(stages: readonly S[]): S | null {
  return stages.find((one) => one.state !== 'done' && one.state !== 'skipped') ?? null;
}

/** The gate lines of a stage that still forbid its start, given the other stages of the project. */
export function openGateItems(
  gated: Pick<Stage, 'checklist'>,
  stages: readonly Pick<Stage, 'kind' | 'state'>[],
): readonly ChecklistItem[] {
  return gated.checklist.filter((item) => item.isGate && !isClosed(item, stages));
}

function isClosed(item: ChecklistItem, stages: readonly Pick<Stage, 'kind' | 'state'>[]): boolean {
  if (item.isTicked) return true;
  if (item.closedBy === null) return false;
  const closing = stages.filter((one) => one.kind === item.closedBy && one.state !== 'skipped');
  return closing.length > 0 && closing.every((one) => one.state === 'done');
}

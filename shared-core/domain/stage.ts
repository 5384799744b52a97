import { z } from 'zod';
import { STAGE_KINDS, type StageKind } from './stage-kinds';
import { checklistItemIdSchema, projectIdSchema, stageIdSchema } from './ids';

/** Calculators name the kinds they belong to. `other` is anything the maker adds. */
export const stageKindSchema = z.enum(Object.keys(STAGE_KINDS) as [StageKind, ...StageKind[]]);

/**
 * planned: not started; in-hand: being worked on at the bench; out: at the quilter; done; skipped: this project does not need
 * it. A stage that waits for something has the reason in `heldUpBy`, whatever its state.
 */
export const stageStateSchema = z.enum(['planned', 'in-hand', 'out', 'done', 'skipped']);
export type StageState = z.infer<typeof stageStateSchema>;

/**
 * A line to tick off. A line of the gate must be ticked before its stage can start; `closedBy` names the kind of stage that
 * ticks it when it is done.
 */
const checklistItemSchema = z
  .object({
    id: checklistItemIdSchema,
    text: z.string().trim().min(1).max(300),
    isGate: z.boolean(),
    closedBy: stageKindSchema.nullable(),
    isTicked: z.boolean(),
  })
  .readonly();
export type ChecklistItem = z.infer<typeof checklistItemSchema>;

const stageSchema = z
  .object({
    id: stageIdSchema,
    projectId: projectIdSchema,
    position: z.int().min(0),
    kind: stageKindSchema,
    name: z.string().trim().min(1).max(120),
    state: stageStateSchema,
    estimateMinutes: z.int().min(0).max(100_000),
    /** The maker set the estimate; otherwise it came with the stage plan, and the maker's own rates replace it. */
    isOwnEstimate: z.boolean(),
    heldUpBy: z.string().trim().max(300),
    notes: z.string().max(20_000),
    /** Why the maker started with open lines in the gate; empty when there were none. */
    gatePassedWhy: z.string().trim().max(1_000),
    startedAt: z.int().nullable(),
    finishedAt: z.int().nullable(),
    checklist: z.array(checklistItemSchema).readonly(),
    /** Can be worked on at the same time as the stage before it. */
    isBeside: z.boolean(),
    /** The calculators on its page, by name; null: those of its kind. */
    calculators: z.array(z.string()).readonly().nullable(),
  })
  .readonly();
export type Stage = z.infer<typeof stageSchema>;

/** A stage as a stage plan describes it, before it belongs to a project. */
export const plannedStageSchema = z
  .object({
    kind: stageKindSchema,
    name: z.string().trim().min(1).max(120),
    estimateMinutes: z.int().min(0).max(100_000),
    checklist: z
      .array(
        z
          .object({
            text: z.string().trim().min(1).max(300),
            isGate: z.boolean(),
            closedBy: stageKindSchema.nullable(),
          })
          .readonly(),
      )
      .readonly(),
    isBeside: z.boolean().optional(),
    calculators: z.array(z.string().max(60)).max(40).readonly().nullable().optional(),
  })
  .readonly();
export type PlannedStage = z.infer<typeof plannedStageSchema>;

/** Whether nothing is left to do in a stage. */
export function isOver({ state }: Pick<Stage, 'state'>): boolean {
  return state === 'done' || state === 'skipped';
}

/** The first stage that is not over; null when all are. */
export function currentStage<S extends Pick<Stage, 'state'>>(stages: readonly S[]): S | null {
  return stages.find((one) => !isOver(one)) ?? null;
}

/** The lines of a stage's gate that are still open, given the other stages of the project. */
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

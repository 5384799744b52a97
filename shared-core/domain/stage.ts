import { z } from 'zod';
import { STAGE_KINDS, type StageKind } from './stage-kinds';
import type { ChecklistItemId, ProjectId, StageId } from './ids';

/** Calculators name the kinds they belong to. `other` is anything the maker adds. */
export const stageKindSchema = z.enum(Object.keys(STAGE_KINDS) as [StageKind, ...StageKind[]]);

/**
 * planned: not started; in-hand: being worked on at the bench; out: at the quilter; done; skipped: this project does not need
 * it. A stage that waits for something has the reason in `heldUpBy`, whatever its state.
 */
export const stageStateSchema = z.enum(['planned', 'in-hand', 'out', 'done', 'skipped']);
export type StageState = z.infer<typeof stageStateSchema>;

/**
 * A line to tick off. A line of the gate must be ticked before its stage can start. Where the project has stages of the kind
 * `closedBy`, they alone say whether it is true: it is closed when they are done, and no tick changes that.
 */
export interface ChecklistItem {
  readonly id: ChecklistItemId;
  readonly text: string;
  readonly isGate: boolean;
  readonly closedBy: StageKind | null;
  readonly isTicked: boolean;
}

export interface Stage {
  readonly id: StageId;
  readonly projectId: ProjectId;
  readonly position: number;
  readonly kind: StageKind;
  readonly name: string;
  readonly state: StageState;
  readonly estimateMinutes: number;
  /** The maker set the estimate; otherwise it came with the stage plan, and the maker's own rates replace it. */
  readonly isOwnEstimate: boolean;
  readonly heldUpBy: string;
  readonly notes: string;
  /** Why the maker started with open lines in the gate; empty when there were none. */
  readonly gatePassedWhy: string;
  /** UTC milliseconds. */
  readonly startedAt: number | null;
  readonly finishedAt: number | null;
  readonly checklist: readonly ChecklistItem[];
  /** Can be worked on at the same time as the stage before it. */
  readonly isBeside: boolean;
  /** The calculators on its page, by name; null: those of its kind. */
  readonly calculators: readonly string[] | null;
}

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

/** The kinds of the stages that come before this one; a skipped stage is not done, so it is left out. */
export function kindsBefore(
  { position }: Pick<Stage, 'position'>,
  stages: readonly Pick<Stage, 'kind' | 'state' | 'position'>[],
): readonly StageKind[] {
  return stages.filter((one) => one.position < position && one.state !== 'skipped').map(({ kind }) => kind);
}

/** The lines of a stage's gate that are still open, given the other stages of the project. */
export function openGateItems(
  gated: Pick<Stage, 'checklist'>,
  stages: readonly Pick<Stage, 'kind' | 'state'>[],
): readonly ChecklistItem[] {
  return gated.checklist.filter((item) => item.isGate && !isClosed(item, stages));
}

/** Whether a line needs nothing more: ticked, or known to be true by the project's own stages. */
export function isClosed(item: ChecklistItem, stages: readonly Pick<Stage, 'kind' | 'state'>[]): boolean {
  const closing = closingStages(item, stages);
  return closing.length === 0 ? item.isTicked : closing.every((one) => one.state === 'done');
}

/** Whether the project's own stages say that a line is true, so that no tick is asked for. */
export function isKnownByStages(
  item: ChecklistItem,
  stages: readonly Pick<Stage, 'kind' | 'state'>[],
): boolean {
  return closingStages(item, stages).length > 0;
}

function closingStages(
  { closedBy }: ChecklistItem,
  stages: readonly Pick<Stage, 'kind' | 'state'>[],
): readonly Pick<Stage, 'kind' | 'state'>[] {
  return closedBy === null
    ? []
    : stages.filter(({ kind, state }) => kind === closedBy && state !== 'skipped');
}

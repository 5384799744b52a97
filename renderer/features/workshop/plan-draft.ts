import type { StagePlan } from '#core/contract/projects';
import type { PlannedStage } from '#core/domain/stage';

/** A stage plan in its form. Each stage has a key, so that its fields move with it when the order changes. */
export interface PlanDraft {
  readonly id: StagePlan['id'] | null;
  readonly name: string;
  readonly says: string;
  readonly stages: readonly DraftStage[];
}

export interface DraftStage extends PlannedStage {
  readonly key: number;
}

const FIRST_STAGE: PlannedStage = {
  kind: 'piecing',
  name: 'Piece the top',
  estimateMinutes: 600,
  checklist: [],
};

export function newPlanDraft(): PlanDraft {
  return { id: null, name: '', says: '', stages: [{ ...FIRST_STAGE, key: 0 }] };
}

/** A plan to be changed (with its id) or copied (without). */
export function planDraftOf(plan: StagePlan, id: StagePlan['id'] | null): PlanDraft {
  const stages = plan.stages.map((stage, key) => ({ ...stage, key }));
  return { id, name: id === null ? `${plan.name} (copy)` : plan.name, says: plan.says, stages };
}

export function withStageAdded(draft: PlanDraft): PlanDraft {
  const key = 1 + Math.max(-1, ...draft.stages.map((stage) => stage.key));
  const added: DraftStage = { kind: 'other', name: '', estimateMinutes: 60, checklist: [], key };
  return { ...draft, stages: [...draft.stages, added] };
}

export function withStageChanged(draft: PlanDraft, key: number, part: Partial<PlannedStage>): PlanDraft {
  return { ...draft, stages: draft.stages.map((one) => (one.key === key ? { ...one, ...part } : one)) };
}

export function withoutStage(draft: PlanDraft, key: number): PlanDraft {
  return { ...draft, stages: draft.stages.filter((one) => one.key !== key) };
}

/** Moves a stage one place earlier (-1) or later (1); at either end nothing changes. */
export function withStageMoved(draft: PlanDraft, key: number, by: -1 | 1): PlanDraft {
  const from = draft.stages.findIndex((one) => one.key === key);
  const [moved, other] = [draft.stages[from], draft.stages[from + by]];
  if (moved === undefined || other === undefined) return draft;
  return {
    ...draft,
    stages: draft.stages.map((one, at) => (at === from ? other : at === from + by ? moved : one)),
  };
}

import type { PlannedStage, StageState } from './stage';
import type { StageKind } from './stage-kinds';

/** A stage of a project in progress, as a change of its stage plan sees it. */
export interface RunningStage {
  readonly id: string;
  readonly kind: StageKind;
  readonly name: string;
  readonly state: StageState;
  /** It has a record: work, notes, time, a trip, photos, answers or cuts. */
  readonly isRecorded: boolean;
}

/**
 * One position in the new order: a stage that stays and follows the plan, a new one, or one that is not in the plan but
 * stays because it has records.
 */
export type PlanStep<Running extends RunningStage> =
  | { readonly how: 'stays'; readonly stage: Running; readonly planned: PlannedStage }
  | { readonly how: 'fresh'; readonly planned: PlannedStage }
  | { readonly how: 'left-over'; readonly stage: Running };

export interface PlanMatch<Running extends RunningStage> {
  readonly steps: readonly PlanStep<Running>[];
  /** Stages that are not in the plan and have no records. */
  readonly gone: readonly Running[];
}

/**
 * Applies a stage plan to a project in progress without losing a record. Stages are matched by kind and name first, then by
 * kind alone, in order; a stage without a match stays behind the stage it followed.
 */
export function matchPlan<Running extends RunningStage>(
  running: readonly Running[],
  plan: readonly PlannedStage[],
): PlanMatch<Running> {
  const matched = matchedStages(running, plan);
  const taken = new Set(matched.values());
  const leftOver = running.filter((stage) => !taken.has(stage) && stage.isRecorded);
  const gone = running.filter((stage) => !taken.has(stage) && !stage.isRecorded);
  const steps = plan.map((planned, at): PlanStep<Running> => {
    const stage = matched.get(at);
    return stage === undefined ? { how: 'fresh', planned } : { how: 'stays', stage, planned };
  });
  const laid = leftOver.reduce<readonly PlanStep<Running>[]>(
    (before, stage) => laidAfter(before, stage, running),
    steps,
  );
  return { steps: laid, gone };
}

function matchedStages<Running extends RunningStage>(
  running: readonly Running[],
  plan: readonly PlannedStage[],
): ReadonlyMap<number, Running> {
  const matched = new Map<number, Running>();
  const isFree = (stage: Running) => ![...matched.values()].includes(stage);
  for (const byName of [true, false]) {
    plan.forEach(({ kind, name }, at) => {
      if (matched.has(at)) return;
      const stage = running.find((one) => isFree(one) && one.kind === kind && (!byName || one.name === name));
      if (stage !== undefined) matched.set(at, stage);
    });
  }
  return matched;
}

function laidAfter<Running extends RunningStage>(
  steps: readonly PlanStep<Running>[],
  stage: Running,
  running: readonly Running[],
): readonly PlanStep<Running>[] {
  const before = running.slice(0, running.indexOf(stage));
  const after = steps.findLastIndex((step) => step.how !== 'fresh' && before.includes(step.stage));
  return [...steps.slice(0, after + 1), { how: 'left-over', stage }, ...steps.slice(after + 1)];
}

import type { PlannedStage, StageState } from './stage';
import type { StageKind } from './stage-kinds';

/** A stage of a running project, as far as a change of its plan goes. */
export interface RunningStage {
  readonly id: string;
  readonly kind: StageKind;
  readonly name: string;
  readonly state: StageState;
  /** Something was done, noted, clocked, sent, photographed, worked out or cut in it. */
  readonly isRecorded: boolean;
}

/**
 * One place of the new order: a stage that stays and takes on what the plan says, a fresh one, or one the plan does not know
 * that stays because something is recorded of it.
 */
export type PlanStep<Running extends RunningStage> =
  | { readonly how: 'stays'; readonly stage: Running; readonly planned: PlannedStage }
  | { readonly how: 'fresh'; readonly planned: PlannedStage }
  | { readonly how: 'left-over'; readonly stage: Running };

export interface PlanMatch<Running extends RunningStage> {
  readonly steps: readonly PlanStep<Running>[];
  /** Stages the plan does not know and of which nothing is recorded. */
  readonly gone: readonly Running[];
}

/**
 * Lays a plan over a running project so that nothing recorded is lost. Stages are matched by kind and name first, then by kind
 * alone, each in the order they stand; what is left over keeps its place after the stage it came after.
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

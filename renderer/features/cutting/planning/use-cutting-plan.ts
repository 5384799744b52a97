import { useMemo, useState } from 'react';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';
import type { CuttingRule } from '#core/cutting/tree/cut-plan';
import type { CuttingJob, JobPlan } from '#core/cutting/tree/cutting-job';
import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { type Locks, locksOf } from '../table/locked-cuts';
import { jobOfSetup, type PlanStash } from './job-of-setup';
import { type Planning, usePlanning } from './use-planning';

interface CuttingPlan {
  /** What the saved plan has already cut. */
  readonly locks: Locks;
  /** The job of the planner; null when there is nothing to plan. */
  readonly job: CuttingJob | null;
  readonly planning: Planning;
  readonly chosen: JobPlan | null;
  readonly choose: (rule: CuttingRule) => void;
}

/** Plans a setup as it changes. `stash` is undefined until it is read; with `isTooMuch` nothing is planned. */
export function useCuttingPlan(
  setup: CuttingSetup,
  stash: PlanStash | undefined,
  saved: KeptWithTicks | null,
  isTooMuch: boolean,
): CuttingPlan {
  const locks = useMemo(() => locksOf(saved, setup.lines), [saved, setup.lines]);
  const job = useMemo(
    () =>
      stash === undefined || setup.lines.length === 0 || isTooMuch ? null : jobOfSetup(setup, stash, locks),
    [setup, stash, locks, isTooMuch],
  );
  const planning = usePlanning(job);
  const [rule, choose] = useState<CuttingRule | null>(saved?.plan.rule ?? null);
  return { locks, job, planning, chosen: chosenPlan(planning.answer, rule), choose };
}

/** The plan the maker chose. Until they choose: the simple plan if it takes no more fabric, otherwise the one with least fabric. */
function chosenPlan(answer: JobAnswer | null, rule: CuttingRule | null): JobPlan | null {
  if (answer === null) return null;
  const { simplestCuts, leastFabric } = answer;
  if (rule !== null) return rule === '2-stage' ? simplestCuts : leastFabric;
  const isSame =
    simplestCuts.totals.usedArea <= leastFabric.totals.usedArea &&
    simplestCuts.totals.boughtArea <= leastFabric.totals.boughtArea;
  return isSame ? simplestCuts : leastFabric;
}

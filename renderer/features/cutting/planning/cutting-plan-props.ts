import type { CuttingRule } from '#core/cutting/tree/cut-plan';
import type { CuttingJob, JobPlan } from '#core/cutting/tree/cutting-job';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import type { PlanStash } from './job-of-setup';
import type { Locks } from '../table/locked-cuts';
import type { Planning } from './use-planning';

/** What the parts of the plan’s page need. */
export interface CuttingPlanProps {
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
  /** What the patches of a line are for, in words. */
  readonly goesTo: (line: CuttingLine) => string;
  /** What the saved plan has already cut. */
  readonly locks: Locks;
  /** The job of the planner; null when there is nothing to plan. */
  readonly job: CuttingJob | null;
  readonly planning: Planning;
  readonly chosen: JobPlan | null;
  readonly onChoose: (rule: CuttingRule) => void;
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
  readonly onChange: (setup: CuttingSetup) => void;
}

import type { CuttingRule } from '#core/cutting/tree/cut-plan';
import type { CuttingJob, JobPlan } from '#core/cutting/tree/cutting-job';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import type { Shelf } from './job-of-setup';
import type { Locks } from '../table/locked-cuts';
import type { Planning } from './use-planning';

/** What the parts of a plan share. */
export interface PlanProps {
  readonly setup: CuttingSetup;
  readonly shelf: Shelf;
  /** What a line's patches are for, in words. */
  readonly goesTo: (line: CuttingLine) => string;
  /** What a plan kept before has cut already. */
  readonly locks: Locks;
  /** What the planner is asked. */
  readonly job: CuttingJob | null;
  readonly planning: Planning;
  readonly chosen: JobPlan | null;
  readonly onChoose: (rule: CuttingRule) => void;
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
  readonly onChange: (setup: CuttingSetup) => void;
}

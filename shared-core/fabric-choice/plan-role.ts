import { planCutting } from '#core/cutting/search/plan-cutting';
import { seededRandom } from '#core/units/seeded-random';
import type { CuttingJob, CuttingTable, JobFabric, JobPlan } from '#core/cutting/tree/cutting-job';
import type { FabricRole } from './choice-problem';

export interface RolePlan {
  readonly plan: JobPlan;
  /** What has to be bought, in the steps a shop cuts; 0 when the pieces are enough. */
  readonly lengthToBuy: number;
}

/** Turns of the search after its first plan, so that a plan that just misses is tried again. */
const TURNS = 40;

/** The patches of one role and the one fabric that they come from. */
export function jobOfRole({ name, patches }: FabricRole, fabric: JobFabric, table: CuttingTable): CuttingJob {
  return {
    fabrics: [fabric],
    patches: patches.map((patch, index) => ({
      id: `${name} ${String(index)}`,
      fabric: fabric.id,
      isBiasSquare: false,
      ...patch,
    })),
    table,
    keep: { shortSide: 0, longSide: 0 },
    wishes: ['buy-least'],
  };
}

/** Cuts the patches of a role's job; null when not all of them can be cut. */
export function planRole(job: CuttingJob): RolePlan | null {
  const search = planCutting(job, seededRandom(1));
  for (let turn = 0; turn < TURNS && !search.isFinished(); turn += 1) {
    search.step(() => 0, 0);
    const found = search.answer()?.leastFabric;
    if (found?.unplaced.length === 0 && found.purchases.length === 0) break;
  }
  while (search.answer() === undefined && !search.isFinished()) search.step(() => 0, 0);
  const plan = search.answer()?.leastFabric;
  if (plan === undefined || plan.unplaced.length > 0) return null;
  return { plan, lengthToBuy: plan.purchases.reduce((sum, { length }) => sum + length, 0) };
}

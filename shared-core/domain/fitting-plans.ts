import type { PlannedStage } from './stage';
import { stageKindRecord } from './stage-kinds';

/** What a stage plan is for: a piece without a hole, a closed ring, or a ring with a slit to its hole. */
export type PlanPiece = 'whole' | 'ring' | 'slit-ring';

/** How large a piece a plan is meant for. long: at least twice as long as wide. small: sewn at home in a few evenings. */
export type PlanSize = 'long' | 'small' | 'large';

interface Plan {
  readonly stages: readonly PlannedStage[];
  /** Null for a plan of the maker's own: its stages say whether it cuts a hole, and it fits rings of both kinds. */
  readonly piece: PlanPiece | null;
}

/** The plans that a project with this hole and slit can follow, in their order. None cuts a hole into a piece without one. */
export function fittingPlans<P extends Plan>(
  plans: readonly P[],
  { hasHole, hasSlit }: { readonly hasHole: boolean; readonly hasSlit: boolean },
): readonly P[] {
  const piece = pieceOf(hasHole, hasSlit);
  return plans.filter((plan) => (plan.piece === null ? cutsHole(plan) === hasHole : plan.piece === piece));
}

function pieceOf(hasHole: boolean, hasSlit: boolean): PlanPiece {
  if (!hasHole) return 'whole';
  return hasSlit ? 'slit-ring' : 'ring';
}

function cutsHole({ stages }: Plan): boolean {
  return stages.some(({ kind }) => stageKindRecord(kind).isIrreversible);
}

import type { KeptPlan, TickedStep } from '#core/domain/cutting-plan';
import type { FabricPieceId } from '#core/domain/ids';
import { type CutStep, cutSteps, lengthCut } from './cut-steps';
import type { JobPlan, PiecePlan } from './cutting-job';
import { totalsOf } from './job-totals';
import { describePiece } from './piece-plan';

/** A saved plan with the steps that are checked off, as the store returns it. */
export interface KeptWithTicks {
  readonly plan: KeptPlan;
  readonly ticked: readonly TickedStep[];
}

/** The ticks of a piece that are booked and not undone, in the order of cutting. */
export function bookedTicks(
  ticked: readonly TickedStep[],
  pieceId: FabricPieceId | null,
): readonly TickedStep[] {
  return ticked.filter((step) => step.pieceId === pieceId && step.isBooked);
}

/** The steps of a piece of a saved plan. A step that was ticked keeps the parts it had at that time. */
export function stepsOfPiece(
  { tree, pieceId }: KeptPlan['pieces'][number],
  ticked: readonly TickedStep[],
): readonly CutStep[] {
  const own = ticked.filter((step) => step.pieceId === pieceId);
  return cutSteps(
    tree,
    own.map(({ parts }) => parts),
  );
}

/** The length from the near end of a piece to the first step that is not cut yet. */
export function lengthDone(piece: KeptPlan['pieces'][number], ticked: readonly TickedStep[]): number {
  const booked = new Set(bookedTicks(ticked, piece.pieceId).map(({ place }) => place));
  const steps = stepsOfPiece(piece, ticked);
  const first = steps.findIndex((_, place) => !booked.has(place));
  return lengthCut(first < 0 ? steps : steps.slice(0, first));
}

/** A saved plan in the form that the planner returns. */
export function planOfKept({ plan, ticked }: KeptWithTicks): JobPlan {
  const { table } = plan.setup;
  const pieces = plan.pieces.map((piece): PiecePlan => {
    const { tree } = piece;
    const one = {
      piece: piece.pieceId ?? undefined,
      fabric: piece.fabric,
      width: tree.width,
      length: tree.height,
    };
    return describePiece(one, tree, table, lengthDone(piece, ticked));
  });
  const totals = totalsOf(
    pieces,
    plan.unplaced.reduce((sum, { copies }) => sum + copies, 0),
  );
  const leastArea = pieces.reduce((sum, piece) => sum + piece.areas.patches, 0);
  return {
    rule: plan.rule,
    pieces,
    purchases: plan.purchases,
    unplaced: plan.unplaced,
    totals,
    leastArea,
    gap: leastArea === 0 ? 0 : (totals.usedArea - leastArea) / leastArea,
  };
}

import type { CutTree } from '#core/cutting/cut-plan';
import { type CutStep, cutSteps, lengthCut } from '#core/cutting/cut-steps';
import type { CuttingJob, JobPlan, PiecePlan } from '#core/cutting/cutting-job';
import { totalsOf } from '#core/cutting/job-totals';
import { describePiece } from '#core/cutting/piece-plan';
import type { KeptPlan, TickedStep } from '#core/domain/cutting-plan';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import { type ClothPieceId, clothPieceId } from '#core/domain/ids';

/** A kept plan with what was cut by it, as the store gives it. */
export interface KeptWithTicks {
  readonly plan: KeptPlan;
  readonly ticked: readonly TickedStep[];
}

/** What a plan has cut off the near end of a piece already: parts of its tree, and their length, 1/320 mm. */
export interface LockedCuts {
  readonly fabric: string;
  readonly parts: readonly CutTree[];
  readonly length: number;
}
export type Locks = ReadonlyMap<ClothPieceId, LockedCuts>;

export const NO_LOCKS: Locks = new Map();

/** A plan of the planner with what it was asked, to be kept. */
export function keepable(setup: CuttingSetup, job: CuttingJob, plan: JobPlan): KeptPlan {
  return {
    setup,
    rule: plan.rule,
    pieces: plan.pieces.map(({ piece, fabric, tree }) => ({
      pieceId: piece === undefined ? null : clothPieceId.parse(piece),
      fabric,
      tree,
    })),
    purchases: plan.purchases,
    unplaced: plan.unplaced,
    plannedWith: job.fabrics
      .flatMap(({ pieces }) => pieces)
      .map(({ id, width, length }) => ({ pieceId: clothPieceId.parse(id), width, length })),
  };
}

/** Which of a piece's ticks stand, in the order of cutting. */
export function standingTicks(
  ticked: readonly TickedStep[],
  pieceId: ClothPieceId | null,
): readonly TickedStep[] {
  return ticked.filter((step) => step.pieceId === pieceId && step.isBooked);
}

/** The steps of a piece of a kept plan: those that were ticked as they were then, the rest as they come. */
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

/** Length from the near end of a piece up to the first step that is not cut yet. */
export function lengthDone(piece: KeptPlan['pieces'][number], ticked: readonly TickedStep[]): number {
  const standing = new Set(standingTicks(ticked, piece.pieceId).map(({ place }) => place));
  const steps = stepsOfPiece(piece, ticked);
  const first = steps.findIndex((_, place) => !standing.has(place));
  return lengthCut(first < 0 ? steps : steps.slice(0, first));
}

/** A kept plan as the planner tells of one. */
export function planOfKept({ plan, ticked }: KeptWithTicks): JobPlan {
  const { table } = plan.setup;
  const pieces = plan.pieces.map((piece): PiecePlan => {
    const { tree } = piece;
    const one = {
      ...{ piece: piece.pieceId ?? undefined, fabric: piece.fabric },
      ...{ width: tree.width, length: tree.height },
    };
    return describePiece(one, tree, table, lengthDone(piece, ticked));
  });
  const totals = totalsOf(
    pieces,
    plan.unplaced.reduce((sum, { copies }) => sum + copies, 0),
  );
  const leastArea = pieces.reduce((sum, piece) => sum + piece.areas.patches, 0);
  return {
    ...{ rule: plan.rule, pieces, purchases: plan.purchases, unplaced: plan.unplaced, totals, leastArea },
    gap: leastArea === 0 ? 0 : (totals.usedArea - leastArea) / leastArea,
  };
}

/** What a kept plan has cut, told in the lines of another: so the rest is planned behind it. */
export function locksOf(kept: KeptWithTicks | null, lines: readonly CuttingLine[]): Locks {
  if (kept === null) return NO_LOCKS;
  const locks = new Map<ClothPieceId, LockedCuts>();
  for (const piece of kept.plan.pieces) {
    const steps = stepsOfPiece(piece, kept.ticked);
    const done = standingTicks(kept.ticked, piece.pieceId).flatMap(({ place }) => steps[place] ?? []);
    if (piece.pieceId === null || done.length === 0) continue;
    locks.set(piece.pieceId, {
      fabric: piece.fabric,
      parts: done.flatMap(({ parts }) => parts).map((part) => inLines(part, kept.plan.setup.lines, lines)),
      length: lengthCut(done),
    });
  }
  return locks;
}

/** Patches that are no longer asked for, or in another size, are cloth that was cut: like a margin, it is used up. */
function inLines(tree: CutTree, before: readonly CuttingLine[], now: readonly CuttingLine[]): CutTree {
  if (tree.kind === 'split') {
    return { ...tree, parts: tree.parts.map((part) => inLines(part, before, now)) };
  }
  if (tree.kind === 'rest') return tree;
  const was = before[tree.patch];
  const patch = was === undefined ? -1 : now.findIndex((line) => isSameLine(line, was));
  if (patch >= 0) return { ...tree, patch };
  return { kind: 'rest', width: tree.width, height: tree.height, use: 'margin' };
}

function isSameLine(one: CuttingLine, other: CuttingLine): boolean {
  return (
    one.id === other.id &&
    one.projectId === other.projectId &&
    one.fabric === other.fabric &&
    one.width === other.width &&
    one.length === other.length
  );
}

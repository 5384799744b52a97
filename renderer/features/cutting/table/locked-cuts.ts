import type { CutTree } from '#core/cutting/tree/cut-plan';
import { lengthCut } from '#core/cutting/tree/cut-steps';
import type { CuttingJob, JobPlan } from '#core/cutting/tree/cutting-job';
import { type KeptWithTicks, standingTicks, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import type { KeptPlan } from '#core/domain/cutting-plan';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import { type FabricPieceId, fabricPieceId } from '#core/domain/ids';

/** What a plan has cut off the near end of a piece already: parts of its tree, and their length, 1/320 mm. */
export interface LockedCuts {
  readonly fabric: string;
  readonly parts: readonly CutTree[];
  readonly length: number;
}
export type Locks = ReadonlyMap<FabricPieceId, LockedCuts>;

export const NO_LOCKS: Locks = new Map();

/** A plan of the planner with what it was asked, to be kept. */
export function keepable(setup: CuttingSetup, job: CuttingJob, plan: JobPlan): KeptPlan {
  return {
    setup,
    rule: plan.rule,
    pieces: plan.pieces.map(({ piece, fabric, tree }) => ({
      pieceId: piece === undefined ? null : fabricPieceId.parse(piece),
      fabric,
      tree,
    })),
    purchases: plan.purchases,
    unplaced: plan.unplaced,
    plannedWith: job.fabrics
      .flatMap(({ pieces }) => pieces)
      .map(({ id, width, length }) => ({ pieceId: fabricPieceId.parse(id), width, length })),
  };
}

/** What a kept plan has cut, told in the lines of another: so the rest is planned behind it. */
export function locksOf(kept: KeptWithTicks | null, lines: readonly CuttingLine[]): Locks {
  if (kept === null) return NO_LOCKS;
  const locks = new Map<FabricPieceId, LockedCuts>();
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

/** Patches that are no longer asked for, or in another size, are fabric that was cut: like a margin, it is used up. */
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

import { lengthCut } from '#core/cutting/tree/cut-steps';
import type { CuttingJob, JobPlan } from '#core/cutting/tree/cutting-job';
import { type KeptWithTicks, bookedTicks, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import type { CutTree, KeptPlan } from '#core/domain/cutting-plan';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import { type FabricPieceId, fabricPieceIdSchema } from '#core/domain/ids';

/** What a plan has already cut from the near end of a piece: parts of its tree, and their length, 1/320 mm. */
export interface LockedCuts {
  readonly fabric: string;
  readonly parts: readonly CutTree[];
  readonly length: number;
}
export type Locks = ReadonlyMap<FabricPieceId, LockedCuts>;

export const NO_LOCKS: Locks = new Map();

/** The planner’s plan and its job, in the form that is stored. */
export function planToSave(setup: CuttingSetup, job: CuttingJob, plan: JobPlan): KeptPlan {
  return {
    setup,
    rule: plan.rule,
    pieces: plan.pieces.map(({ piece, fabric, tree }) => ({
      pieceId: piece === undefined ? null : fabricPieceIdSchema.parse(piece),
      fabric,
      tree,
    })),
    purchases: plan.purchases,
    unplaced: plan.unplaced,
    plannedWith: job.fabrics
      .flatMap(({ pieces }) => pieces)
      .map(({ id, width, length }) => ({ pieceId: fabricPieceIdSchema.parse(id), width, length })),
  };
}

/** What a saved plan has cut, with its patches matched to other lines, so that the rest is planned behind it. */
export function locksOf(saved: KeptWithTicks | null, lines: readonly CuttingLine[]): Locks {
  if (saved === null) return NO_LOCKS;
  const locks = new Map<FabricPieceId, LockedCuts>();
  for (const piece of saved.plan.pieces) {
    const steps = stepsOfPiece(piece, saved.ticked);
    const done = bookedTicks(saved.ticked, piece.pieceId).flatMap(({ place }) => steps[place] ?? []);
    if (piece.pieceId === null || done.length === 0) continue;
    locks.set(piece.pieceId, {
      fabric: piece.fabric,
      parts: done.flatMap(({ parts }) => parts).map((part) => inLines(part, saved.plan.setup.lines, lines)),
      length: lengthCut(done),
    });
  }
  return locks;
}

/** A cut patch that the lines no longer ask for in this size counts as margin: its fabric is used up. */
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

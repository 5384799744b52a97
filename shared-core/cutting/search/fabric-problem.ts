import type { CutTree } from '#core/domain/cutting-plan';
import type { CutLimits, CuttingRule, PatchType } from '../tree/cut-plan';
import type { PieceSpace } from '../tree/piece-space';

/** A space, or one sheet of a pack, and the tree found for it. Patches are numbered by their index in the problem. */
export interface FilledSpace {
  readonly space: PieceSpace;
  readonly tree: CutTree;
}

/** One fabric's patches and the fabric to cut them from, in true units. */
export interface FabricProblem {
  readonly patches: readonly PatchType[];
  /** Spaces of the stash. */
  readonly spaces: readonly PieceSpace[];
  readonly toBuy: PieceSpace | undefined;
  readonly rule: CuttingRule;
  readonly limits: CutLimits;
  readonly random: () => number;
}

import type { CutTree, CuttingRule, PatchType } from '../tree/cut-plan';
import type { CutLimits } from '../tree/cut-plan';
import type { PieceSpace } from '../tree/piece-space';

/** One space (one sheet where there are several) and the tree found for it, patches by their index in the fabric's list. */
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

import type { CutTree } from '#core/domain/cutting-plan';
import type { CutLimits } from '../tree/cut-plan';
import type { FabricProblem } from './fabric-problem';
import type { PieceSpace } from '../tree/piece-space';
import { stripRun } from './strip-run';

/** A search for the shortest way to cut given copies from one space, which continues from pass to pass. */
export interface ShortestRun {
  readonly space: PieceSpace;
  /** Runs for at most `budget` steps; true if they found a shorter tree that fits the space. */
  advance(budget: number): Generator<unknown, boolean>;
  /** The shortest tree found so far that fits the space. */
  tree(): CutTree | undefined;
  /** Proven least height in true units. */
  bound(): number;
  isFinished(): boolean;
}

/** Starts a run for the given copies. Every patch with copies must fit the space by itself. */
export function shortestRun(
  problem: FabricProblem,
  space: PieceSpace,
  copies: readonly number[],
): ShortestRun {
  const patches = problem.patches.map((patch, type) => ({ ...patch, copies: copies[type]! }));
  const limits = limitsIn(space, problem.limits);
  const { rule, random } = problem;
  const run = stripRun({ stripWidth: space.width, patches }, { rule, limits, random });
  let fitting: CutTree | undefined;
  return {
    space,
    *advance(budget) {
      let hasNews = false;
      for (let step = 0; step < budget && !run.isFinished(); step++) {
        const best = run.advance() ? run.best() : undefined;
        if (best !== undefined && best.height <= space.height && best.tree !== fitting) {
          fitting = best.tree;
          hasNews = true;
        }
        yield;
      }
      return hasNews;
    },
    tree: () => fitting,
    bound: () => run.bound(),
    isFinished: () => run.isFinished(),
  };
}

/** On a piece that is planned on its side, along and across are swapped. */
function limitsIn(space: PieceSpace, limits: CutLimits): CutLimits {
  if (!space.isOnItsSide) return limits;
  return { ...limits, longestAcross: limits.longestAlong, longestAlong: limits.longestAcross };
}

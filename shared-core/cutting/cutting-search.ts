import type { Result } from '../result';
import type { CutTree, CuttingRule, StripProblem } from './tree/cut-plan';
import type { FoundLayout } from './search/strip-run';
import { failure, success } from '../result';
import { NO_LIMITS } from './tree/cut-plan';
import { countCuts, countStages } from './tree/cut-tree';
import { settleTree } from './tree/settle-tree';
import { stripRun } from './search/strip-run';

/** The best layout so far, and how far from the best possible it can be at most. */
export interface CuttingAnswer {
  readonly height: number;
  readonly tree: CutTree;
  /** Single cuts, fabric unfolded. */
  readonly cuts: number;
  /** Turns between across and along; trims do not count. */
  readonly stages: number;
  /** No layout under this rule is lower. */
  readonly lowerBound: number;
  /** (height - lowerBound) / lowerBound; 0 without patches. */
  readonly gap: number;
}

/** A search that runs in slices: between two slices it can be asked, dropped or left. */
export interface CuttingSearch {
  /** Undefined before the first layout. */
  answer(): CuttingAnswer | undefined;
  /** True when the bound is met or the search has tried all it knows. */
  isFinished(): boolean;
  /** Runs until `now()` reaches `until` or the search is finished; true if the layout or the bound got better. */
  step(now: () => number, until: number): boolean;
}

export interface CuttingOptions {
  readonly rule: CuttingRule;
  /** Numbers in [0, 1) from a seeded generator: equal seeds give equal searches, step for step. */
  readonly random: () => number;
}

export interface TooWidePatches {
  readonly code: 'patches-too-wide';
  /** Indexes of the patch types that fit the strip in no allowed turning. */
  readonly patches: readonly number[];
}

/** Starts a search for the shortest length of fabric; fails if a patch is wider than the strip however it may lie. */
export function createCuttingSearch(
  problem: StripProblem,
  options: CuttingOptions,
): Result<CuttingSearch, TooWidePatches> {
  const tooWide = problem.patches.flatMap((patch, index) => {
    const fits = patch.width <= problem.stripWidth || (patch.mayTurn && patch.height <= problem.stripWidth);
    return fits || patch.copies === 0 ? [] : [index];
  });
  if (tooWide.length > 0) return failure({ code: 'patches-too-wide', patches: tooWide });
  return success(searchOf(problem, options));
}

function searchOf(problem: StripProblem, options: CuttingOptions): CuttingSearch {
  const run = stripRun(problem, { ...options, limits: NO_LIMITS });
  return {
    answer: () => {
      const best = run.best();
      return best && describeAnswer(problem, best, run.bound());
    },
    isFinished: () => run.isFinished(),
    step(now, until) {
      let hasNews = false;
      while (!run.isFinished()) {
        if (run.advance()) hasNews = true;
        if (now() >= until) break;
      }
      return hasNews;
    },
  };
}

function describeAnswer(
  { patches, stripWidth }: StripProblem,
  { height, tree: found }: FoundLayout,
  lowerBound: number,
): CuttingAnswer {
  const tree = settleTree(found, patches, stripWidth, height);
  return {
    height,
    tree,
    cuts: countCuts(tree),
    stages: countStages(tree),
    lowerBound,
    gap: lowerBound === 0 ? 0 : (height - lowerBound) / lowerBound,
  };
}

import type { CutTree } from '#core/domain/cutting-plan';
import { type CuttingRule, NO_LIMITS, type StripProblem } from '#core/cutting/tree/cut-plan';
import { countCuts, countStages } from '#core/cutting/tree/cut-tree';
import { settleTree } from '#core/cutting/tree/settle-tree';
import { type FoundLayout, stripRun } from '#core/cutting/search/strip-run';

/** The best layout so far, and how far at most it is from the best possible one. */
export interface CuttingAnswer {
  readonly height: number;
  readonly tree: CutTree;
  /** Single cuts, with the fabric unfolded. */
  readonly cuts: number;
  /** Turns between across and along; trims do not count. */
  readonly stages: number;
  /** No layout under this rule is lower. */
  readonly lowerBound: number;
  /** (height - lowerBound) / lowerBound; 0 without patches. */
  readonly gap: number;
}

/** A search on one strip that runs in slices of time. */
export interface CuttingSearch {
  /** Undefined before the first layout. */
  answer(): CuttingAnswer | undefined;
  /** Runs until `now()` reaches `until` or the search is finished. */
  step(now: () => number, until: number): void;
}

export interface CuttingOptions {
  readonly rule: CuttingRule;
  /** Numbers in [0, 1) from a seeded generator: equal seeds give equal searches, step for step. */
  readonly random: () => number;
}

/** Starts a search for the shortest length of fabric, in any unit; throws if a patch is too wide for the strip. */
export function createCuttingSearch(problem: StripProblem, options: CuttingOptions): CuttingSearch {
  const { patches, stripWidth } = problem;
  const tooWide = patches.flatMap(({ width, height, copies, mayTurn }, type) => {
    const fits = width <= stripWidth || (mayTurn && height <= stripWidth);
    return fits || copies === 0 ? [] : [type];
  });
  if (tooWide.length > 0) throw new Error(`Patch types wider than the strip: ${tooWide.join(', ')}`);
  const run = stripRun(problem, { ...options, limits: NO_LIMITS });
  return {
    answer: () => {
      const best = run.best();
      return best && describeAnswer(problem, best, run.bound());
    },
    step(now, until) {
      while (!run.isFinished()) {
        run.advance();
        if (now() >= until) break;
      }
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

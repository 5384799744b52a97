import type { CutTree, CuttingRule, StripProblem } from './cut-plan';
import type { Result } from '../result';
import { NO_LIMITS } from './beam-move';
import { countCuts, countStages } from './cut-tree';
import { failure, success } from '../result';
import type { SearchNews } from './improve-strips';
import { searchStrip } from './search-strip';
import { isExactGrid, patchesOnGrid, searchGrid } from './search-grid';
import { lengthBound } from './length-bounds';
import { neededSize, settleTree } from './settle-tree';

/** The best layout so far, and how far from the best possible it can be at most. */
export interface CuttingAnswer {
  readonly height: number;
  readonly tree: CutTree;
  /** Single cuts, cloth unfolded. */
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

/** Starts a search for the shortest length of cloth; fails if a patch is wider than the strip however it may lie. */
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
  const { patches, stripWidth } = problem;
  let layout: { readonly height: number; readonly tree: CutTree } | undefined;
  let lowerBound = lengthBound(problem);
  let hasNews = false;
  let isFinished = false;
  const grid = searchGrid(patches, stripWidth, lowerBound * 2);
  const isExact = isExactGrid(patches, grid);
  const news: SearchNews = {
    layout(_height, tree) {
      const { height } = neededSize(tree, patches);
      if (layout !== undefined && height >= layout.height) return;
      layout = { height, tree: settleTree(tree, patches, stripWidth, height) };
      hasNews = true;
    },
    bound(height) {
      const proved = isExact ? height * grid.y : 0;
      if (proved <= lowerBound) return;
      lowerBound = proved;
      hasNews = true;
    },
  };
  const onGrid = {
    patches: patchesOnGrid(patches, grid),
    stripWidth: Math.floor(stripWidth / grid.x),
    bound: Math.ceil(lowerBound / grid.y),
  };
  const work = searchStrip(onGrid, options.rule, NO_LIMITS, options.random, news);
  return {
    answer: () => layout && describeAnswer(layout, lowerBound),
    isFinished: () => isFinished,
    step(now, until) {
      hasNews = false;
      while (!isFinished) {
        isFinished = work.next().done === true || (layout !== undefined && layout.height <= lowerBound);
        if (now() >= until) break;
      }
      return hasNews;
    },
  };
}

function describeAnswer(
  layout: { readonly height: number; readonly tree: CutTree },
  lowerBound: number,
): CuttingAnswer {
  const { height, tree } = layout;
  return {
    height,
    tree,
    cuts: countCuts(tree),
    stages: countStages(tree),
    lowerBound,
    gap: lowerBound === 0 ? 0 : (height - lowerBound) / lowerBound,
  };
}

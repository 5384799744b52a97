import type { CutTree } from '#core/domain/cutting-plan';
import type { SearchRules, StripProblem } from '../tree/cut-plan';
import type { SearchNews } from '../tree/search-news';
import { lengthBound } from './length-bounds';
import { isExactGrid, patchesOnGrid, searchGrid } from './search-grid';
import { type GridProblem, searchStrip } from './search-strip';
import { neededSize } from '../tree/settle-tree';

/** A layout as found, on the search's grid. Patches are numbered by their index in the problem. */
export interface FoundLayout {
  /** Length of fabric it needs in true units. */
  readonly height: number;
  readonly tree: CutTree;
}

/** A search on one strip that runs in small steps. */
export interface StripRun {
  /** Takes one step; true if it found a lower layout or a better bound. */
  advance(): boolean;
  best(): FoundLayout | undefined;
  /** Proven least height in true units. */
  bound(): number;
  /** True when a layout meets the bound or the search has nothing more to try. */
  isFinished(): boolean;
}

/**
 * Starts a search for the shortest length, with limits in true units. Every patch with copies must fit the strip. Without
 * patches the run ends with a layout of height 0.
 */
export function stripRun(problem: StripProblem, rules: SearchRules): StripRun {
  const types = Array.from(problem.patches.keys()).filter((type) => problem.patches[type]!.copies > 0);
  const patches = types.map((type) => problem.patches[type]!);
  let best: FoundLayout | undefined;
  const least = lengthBound(problem);
  const grid = searchGrid(patches, problem.stripWidth, least * 2);
  const isExact = isExactGrid(patches, grid);
  // Every possible length of a layout is a sum of sizes, and so a multiple of their common step.
  let bound = isExact ? Math.ceil(least / grid.y) * grid.y : least;
  let hasNews = false;
  const news: SearchNews = {
    layout(_height, found) {
      const tree = renumberPatches(found, types);
      const { height } = neededSize(tree, problem.patches);
      if (best !== undefined && height >= best.height) return;
      best = { height, tree };
      hasNews = true;
    },
    bound(height) {
      if (!isExact || height * grid.y <= bound) return;
      bound = height * grid.y;
      hasNews = true;
    },
  };
  const work = workOnGrid({ patches, stripWidth: problem.stripWidth, bound }, grid, rules, news);
  let isOver = false;
  const isFinished = () => isOver || (best !== undefined && best.height <= bound);
  return {
    advance() {
      hasNews = false;
      if (!isFinished()) isOver = work.next().done === true;
      return hasNews;
    },
    best: () => best,
    bound: () => bound,
    isFinished,
  };
}

/** Searches with all sizes in steps of the grid. */
function* workOnGrid(
  problem: GridProblem,
  grid: { readonly x: number; readonly y: number },
  rules: SearchRules,
  news: SearchNews,
): Generator<unknown, void> {
  const { patches, stripWidth, bound } = problem;
  if (patches.length === 0) {
    news.layout(0, { kind: 'rest', width: 0, height: 0, use: 'scrap' });
    return;
  }
  const onGrid = {
    patches: patchesOnGrid(patches, grid, stripWidth),
    stripWidth: Math.floor(stripWidth / grid.x),
    bound: Math.ceil(bound / grid.y),
  };
  const limits = {
    maxStages: rules.limits.maxStages,
    longestAcross: rules.limits.longestAcross / grid.x,
    longestAlong: rules.limits.longestAlong / grid.y,
  };
  yield* searchStrip(onGrid, { ...rules, limits }, news);
}

/** The same tree with each patch's index looked up in `types`. */
export function renumberPatches(tree: CutTree, types: readonly number[]): CutTree {
  if (tree.kind === 'rest') return tree;
  if (tree.kind === 'patch') return { ...tree, patch: types[tree.patch]! };
  return { ...tree, parts: tree.parts.map((part) => renumberPatches(part, types)) };
}

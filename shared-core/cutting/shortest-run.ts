import type { CutTree, PatchType } from './cut-plan';
import type { FabricProblem } from './fabric-search';
import type { PieceSpace } from './piece-space';
import type { CutLimits } from './beam-move';
import type { SearchGrid } from './search-grid';
import { lengthBound } from './length-bounds';
import { isExactGrid, patchesOnGrid, searchGrid } from './search-grid';
import { searchStrip } from './search-strip';
import { neededSize } from './settle-tree';

/** A search for the shortest cutting of given copies from one space, which goes on from pass to pass. */
export interface ShortestRun {
  readonly space: PieceSpace;
  /** Goes on for about `budget` steps; true if a shorter tree that fits the space, or a better bound, came out. */
  advance(budget: number): Generator<unknown, boolean>;
  /** The shortest tree so far that fits the space. */
  tree(): CutTree | undefined;
  /** Proven least height in true units. */
  bound(): number;
  isFinished(): boolean;
}

/** Starts a run for the copies given; every patch with copies must fit the space by itself. */
export function shortestRun(
  problem: FabricProblem,
  space: PieceSpace,
  copies: readonly number[],
): ShortestRun {
  const types = Array.from(copies.keys()).filter((type) => copies[type]! > 0);
  const patches = types.map((type): PatchType => ({ ...problem.patches[type]!, copies: copies[type]! }));
  const grid = searchGrid(patches, space.width, Number.isFinite(space.height) ? space.height : 0);
  let bound = lengthBound({ stripWidth: space.width, patches });
  let best: { readonly tree: CutTree; readonly height: number } | undefined;
  let hasNews = false;
  let isFinished = false;
  const news = {
    layout(_height: number, found: CutTree) {
      const tree = renumber(found, types);
      const { height } = neededSize(tree, problem.patches);
      if (height > space.height || (best !== undefined && height >= best.height)) return;
      best = { tree, height };
      hasNews = true;
    },
    bound(height: number) {
      if (!isExactGrid(patches, grid) || height * grid.y <= bound) return;
      bound = height * grid.y;
      hasNews = true;
    },
  };
  const onGrid = {
    patches: patchesOnGrid(patches, grid),
    stripWidth: Math.floor(space.width / grid.x),
    bound: Math.ceil(bound / grid.y),
  };
  const fitsGrid = onGrid.patches.every(
    (patch) => patch.width <= onGrid.stripWidth || (patch.mayTurn && patch.height <= onGrid.stripWidth),
  );
  const work = fitsGrid
    ? searchStrip(onGrid, problem.rule, limitsOnGrid(problem.limits, space, grid), problem.random, news)
    : undefined;
  const takeNews = () => hasNews && best !== undefined;
  return {
    space,
    *advance(budget) {
      hasNews = false;
      for (let step = 0; step < budget && !isFinished; step++) {
        isFinished =
          work === undefined || work.next().done === true || (best !== undefined && best.height <= bound);
        yield;
      }
      return takeNews();
    },
    tree: () => best?.tree,
    bound: () => bound,
    isFinished: () => isFinished,
  };
}

/** Limits in grid steps; on a piece that lies on its side along and across change places. */
function limitsOnGrid(limits: CutLimits, space: PieceSpace, grid: SearchGrid): CutLimits {
  const [across, along] = space.isOnItsSide
    ? [limits.longestAlong, limits.longestAcross]
    : [limits.longestAcross, limits.longestAlong];
  return { maxStages: limits.maxStages, longestAcross: across / grid.x, longestAlong: along / grid.y };
}

/** The same tree with each patch's index looked up in `types`. */
export function renumber(tree: CutTree, types: readonly number[]): CutTree {
  if (tree.kind === 'rest') return tree;
  if (tree.kind === 'patch') return { ...tree, patch: types[tree.patch]! };
  return { ...tree, parts: tree.parts.map((part) => renumber(part, types)) };
}

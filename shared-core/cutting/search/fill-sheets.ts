import type { CutTree, PatchType } from '../tree/cut-plan';
import type { BeamWorkshop } from '../blocks/beam-context';
import type { FabricProblem, FilledSpace } from './fabric-problem';
import type { PieceSpace } from '../tree/piece-space';
import type { SearchGrid } from './search-grid';
import { beamWorkshop, movesUpTo } from '../blocks/beam-context';
import { countPatches } from '../tree/cut-tree';
import { searchBeam } from '../blocks/guillotine-beam';
import { NONE } from '../blocks/open-rectangles';
import { patchKinds } from '../blocks/patch-kinds';
import { patchesOnGrid, searchGrid } from './search-grid';
import { neededSize } from '../tree/settle-tree';
import { treesOfMoves } from '../blocks/beam-tree';

/** The beam search made ready for sheets of given sizes, on one grid for all of a fabric's pieces. */
export interface SheetWorkshop {
  readonly patches: readonly PatchType[];
  readonly grid: SearchGrid;
  readonly beam: BeamWorkshop;
}

const EDGE_WEIGHT = 0.15;

/** Makes the workshop for a fabric's spaces of known size. */
export function sheetWorkshop({ patches, spaces, rule, limits, random }: FabricProblem): SheetWorkshop {
  const widest = spaces.reduce((most, space) => Math.max(most, space.width), 1);
  const longest = spaces.reduce((most, space) => Math.max(most, space.height), 1);
  const needed = patches.filter((patch) => patch.copies > 0);
  const grid = searchGrid(needed, widest, longest);
  const onGrid = patchesOnGrid(patches, grid, widest);
  const isLimited = rule === '2-stage' || limits.longestAlong < Infinity || limits.longestAcross < Infinity;
  const kinds = patchKinds(onGrid, Math.floor(widest / grid.x), Math.floor(longest / grid.y), !isLimited);
  const areas = onGrid.map((patch) => patch.width * patch.height);
  const stages = {
    maxStages: rule === '2-stage' ? 2 : limits.maxStages,
    longestAcross: limits.longestAcross / grid.x,
    longestAlong: limits.longestAlong / grid.y,
  };
  return { patches, grid, beam: beamWorkshop(kinds, areas, stages, random) };
}

/** Fills one space as full as it can; undefined if no patch fits. */
export function* fillSheet(
  shop: SheetWorkshop,
  space: PieceSpace,
  copies: readonly number[],
  beamWidth: number,
): Generator<unknown, { readonly tree: CutTree; readonly left: readonly number[] } | undefined> {
  const roots = [rootOf(shop, space)];
  const order = { copies, roots, beamWidth, edgeWeight: EDGE_WEIGHT, mustPlaceAll: false };
  const outcome = yield* searchBeam(shop.beam, order);
  if (outcome.last === NONE) return undefined;
  const [tree] = drawTrees(shop, roots, copies, outcome.last);
  if (!fitsInside(shop, tree!, space)) return undefined;
  const used = countPatches(tree!, copies.length);
  return { tree: tree!, left: copies.map((count, type) => count - used[type]!) };
}

/** Places everything on the spaces together, the largest to be filled last; undefined if the search finds no way. */
export function* fitSheets(
  shop: SheetWorkshop,
  spaces: readonly PieceSpace[],
  copies: readonly number[],
  beamWidth: number,
): Generator<unknown, FilledSpace[] | undefined> {
  const largestFirst = spaces
    .toSorted((a, b) => b.width * b.height - a.width * a.height)
    .flatMap((space) => new Array<PieceSpace>(space.times).fill(space));
  const roots = largestFirst.map((space) => rootOf(shop, space));
  const order = { copies, roots, beamWidth, edgeWeight: EDGE_WEIGHT, mustPlaceAll: true };
  const outcome = yield* searchBeam(shop.beam, order);
  if (!outcome.isComplete) return undefined;
  const filled = drawTrees(shop, roots, copies, outcome.last).flatMap((tree, index) =>
    tree.kind === 'rest' ? [] : [{ space: largestFirst[index]!, tree }],
  );
  return filled.every(({ space, tree }) => fitsInside(shop, tree, space)) ? filled : undefined;
}

/** A patch as wide as a fabric is cut down on a coarse grid: what was found may need a step more than there is. */
function fitsInside({ patches }: SheetWorkshop, tree: CutTree, space: PieceSpace): boolean {
  const needed = neededSize(tree, patches);
  return needed.width <= space.width && needed.height <= space.height;
}

function rootOf({ grid }: SheetWorkshop, space: PieceSpace): { width: number; height: number } {
  return { width: Math.floor(space.width / grid.x), height: Math.floor(space.height / grid.y) };
}

function drawTrees(
  { beam }: SheetWorkshop,
  roots: readonly { readonly width: number; readonly height: number }[],
  copies: readonly number[],
  last: number,
): CutTree[] {
  return treesOfMoves(beam.kinds, copies, beam.limits, roots, movesUpTo(beam.history, last));
}

import type { CutTree } from '#core/domain/cutting-plan';
import type { PatchType } from '../tree/cut-plan';
import type { BeamContext } from '../blocks/beam-context';
import type { FabricProblem, FilledSpace } from './fabric-problem';
import type { PieceSpace } from '../tree/piece-space';
import type { SearchGrid } from './search-grid';
import { beamContext, movesUpTo } from '../blocks/beam-context';
import { countPatches } from '../tree/cut-tree';
import { searchBeam } from '../blocks/guillotine-beam';
import { NONE } from '../blocks/open-rectangles';
import { patchKinds } from '../blocks/patch-kinds';
import { patchesOnGrid, searchGrid } from './search-grid';
import { neededSize } from '../tree/settle-tree';
import { treesOfMoves } from '../blocks/beam-tree';

/** A beam search for sheets of given sizes, on one grid for all pieces of a fabric. */
export interface SheetContext {
  readonly patches: readonly PatchType[];
  readonly grid: SearchGrid;
  readonly beam: BeamContext;
}

const EDGE_WEIGHT = 0.15;

/** Makes the context for the spaces of a fabric. */
export function sheetContext({ patches, spaces, rule, limits, random }: FabricProblem): SheetContext {
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
  return { patches, grid, beam: beamContext({ kinds, limits: stages }, areas, random) };
}

/** Fills one space as full as it can; undefined if no patch fits. */
export function* fillSheet(
  context: SheetContext,
  space: PieceSpace,
  copies: readonly number[],
  beamWidth: number,
): Generator<unknown, { readonly tree: CutTree; readonly left: readonly number[] } | undefined> {
  const roots = [rootOf(context, space)];
  const order = { copies, roots, beamWidth, edgeWeight: EDGE_WEIGHT, mustPlaceAll: false };
  const outcome = yield* searchBeam(context.beam, order);
  if (outcome.last === NONE) return undefined;
  const [tree] = drawTrees(context, roots, copies, outcome.last);
  if (!fitsInside(context, tree!, space)) return undefined;
  const used = countPatches(tree!, copies.length);
  return { tree: tree!, left: copies.map((count, type) => count - used[type]!) };
}

/** Places all patches on the spaces together and fills the largest space last; undefined if the search finds no way. */
export function* fitSheets(
  context: SheetContext,
  spaces: readonly PieceSpace[],
  copies: readonly number[],
  beamWidth: number,
): Generator<unknown, FilledSpace[] | undefined> {
  const largestFirst = spaces
    .toSorted((a, b) => b.width * b.height - a.width * a.height)
    .flatMap((space) => new Array<PieceSpace>(space.times).fill(space));
  const roots = largestFirst.map((space) => rootOf(context, space));
  const order = { copies, roots, beamWidth, edgeWeight: EDGE_WEIGHT, mustPlaceAll: true };
  const outcome = yield* searchBeam(context.beam, order);
  if (!outcome.isComplete) return undefined;
  const filled = drawTrees(context, roots, copies, outcome.last).flatMap((tree, index) =>
    tree.kind === 'rest' ? [] : [{ space: largestFirst[index]!, tree }],
  );
  return filled.every(({ space, tree }) => fitsInside(context, tree, space)) ? filled : undefined;
}

/** Whether a tree fits in true units: a coarse grid makes a patch as wide as the fabric a little smaller than it is. */
function fitsInside({ patches }: SheetContext, tree: CutTree, space: PieceSpace): boolean {
  const needed = neededSize(tree, patches);
  return needed.width <= space.width && needed.height <= space.height;
}

function rootOf({ grid }: SheetContext, space: PieceSpace): { width: number; height: number } {
  return { width: Math.floor(space.width / grid.x), height: Math.floor(space.height / grid.y) };
}

function drawTrees(
  { beam }: SheetContext,
  roots: readonly { readonly width: number; readonly height: number }[],
  copies: readonly number[],
  last: number,
): CutTree[] {
  return treesOfMoves(beam, copies, roots, movesUpTo(beam.history, last));
}

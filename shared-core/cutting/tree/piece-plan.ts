import type { CutTree, PieceTree } from '#core/domain/cutting-plan';
import type { PatchType } from './cut-plan';
import type {
  FabricMargins,
  PieceToBuy,
  CuttingJob,
  CuttingTable,
  JobFabric,
  JobPiece,
  KeepLimit,
  Leftover,
  PieceAreas,
  PiecePlan,
} from './cutting-job';
import type { FilledSpace } from '../search/fabric-problem';
import { countFoldedCuts, orderCuts } from './cut-order';
import {
  countStages,
  laidParts,
  placedPatches,
  restTree,
  sheetsTree,
  splitTree,
  transposeTree,
} from './cut-tree';
import { startOfFree } from './piece-space';
import { neededSize, settleTree } from './settle-tree';

/** What all plans for the pieces of one fabric share. Trees count patches by their index in `patches`. */
export interface FabricContext {
  readonly job: CuttingJob;
  readonly fabric: JobFabric;
  readonly patches: readonly PatchType[];
}

/**
 * Makes the plan of a piece from the tree that a search found for its space, on any grid: lays it out in true sizes, adds
 * locked parts, the straightening margin and selvages, and sorts the rests into scrap and leftovers worth keeping.
 */
export function planPiece(
  { job, fabric, patches }: FabricContext,
  { space, tree: found }: FilledSpace,
): PiecePlan {
  const { source } = space;
  const stock = source ?? boughtFabric(fabric.toBuy!, neededSize(found, patches).height);
  const content = settleTree(
    found,
    patches,
    space.width,
    space.isOnItsSide || source !== undefined ? space.height : stock.length - stock.margins.straighten,
  );
  const upright = space.isOnItsSide ? transposeTree(content) : content;
  const near =
    source === undefined || source.lockedParts.length === 0
      ? [restTree(stock.width, stock.margins.straighten, 'margin')]
      : source.lockedParts;
  const bare = splitTree('across', [...near, ...withSelvages(upright, stock.width, stock.margins)]);
  const done = source === undefined || source.lockedParts.length === 0 ? 0 : startOfFree(source);
  const piece = { piece: source?.id, fabric: fabric.id, width: stock.width, length: stock.length };
  return describePiece(piece, sortRests(bare, job.keep), job.table, done);
}

/**
 * Makes the plan of a pack from the trees found for its sheets: the locked sheets come first, then the others, with sheets
 * that are cut alike next to each other. At least one sheet must be locked or filled.
 */
export function planPack(
  { job, fabric, patches }: FabricContext,
  source: JobPiece,
  filled: readonly FilledSpace[],
): PiecePlan {
  const sheets = filled.map(({ space, tree }) => {
    const content = settleTree(tree, patches, space.width, space.height);
    return sortRests(space.isOnItsSide ? transposeTree(content) : content, job.keep);
  });
  const alike = new Map<string, CutTree[]>();
  for (const sheet of sheets) {
    const key = JSON.stringify(sheet);
    alike.set(key, [...(alike.get(key) ?? []), sheet]);
  }
  const tree = sheetsTree([...source.lockedParts, ...[...alike.values()].flat()]);
  const piece = { piece: source.id, fabric: fabric.id, width: tree.width, length: tree.height };
  return describePiece(piece, tree, job.table, startOfFree(source));
}

/** Describes a piece that is cut like this; `done` is the length from its near end that is already cut. */
export function describePiece(
  piece: Pick<PiecePlan, 'piece' | 'fabric' | 'width' | 'length'>,
  tree: PieceTree,
  table: CuttingTable,
  done: number,
): PiecePlan {
  return {
    ...piece,
    tree,
    placed: placedPatches(tree),
    leftovers: leftoversOf(tree),
    cuts: orderCuts(tree, table, done),
    foldedCuts: countFoldedCuts(tree, table),
    stages: countStages(tree),
    areas: areasOf(tree),
  };
}

/** The length to buy that holds the layout, rounded up to a length that is sold. */
function boughtFabric(
  stock: PieceToBuy,
  height: number,
): { width: number; length: number; margins: FabricMargins } {
  const exact = height + stock.margins.straighten;
  return {
    width: stock.width,
    length: Math.ceil(exact / stock.lengthStep) * stock.lengthStep,
    margins: stock.margins,
  };
}

/** Widens each strip to the whole fabric. The uncut far end keeps its selvages. */
function withSelvages(content: CutTree, width: number, margins: FabricMargins): CutTree[] {
  const strips = content.kind === 'split' && content.direction === 'across' ? content.parts : [content];
  return strips.map((strip) =>
    strip.kind === 'rest'
      ? restTree(width, strip.height)
      : splitTree('along', [
          restTree(margins.leftSelvage, strip.height, 'margin'),
          strip,
          restTree(margins.rightSelvage, strip.height, 'margin'),
        ]),
  );
}

function sortRests(tree: CutTree, keep: KeepLimit): CutTree {
  if (tree.kind === 'split') return { ...tree, parts: tree.parts.map((part) => sortRests(part, keep)) };
  if (tree.kind === 'patch' || tree.use === 'margin') return tree;
  const isKept =
    Math.min(tree.width, tree.height) >= keep.shortSide && Math.max(tree.width, tree.height) >= keep.longSide;
  return { ...tree, use: isKept ? 'leftover' : 'scrap' };
}

/** The rests worth keeping, each with its place. The corner of the tree is at (x, y). */
export function leftoversOf(tree: PieceTree, x = 0, y = 0): Leftover[] {
  if (tree.kind === 'rest') {
    return tree.use === 'leftover' ? [{ x, y, width: tree.width, length: tree.height }] : [];
  }
  return laidParts(tree, x, y).flatMap((laid) => leftoversOf(laid.part, laid.x, laid.y));
}

function areasOf(tree: PieceTree): PieceAreas {
  const sum = { patches: 0, leftovers: 0, scrap: 0, margins: 0 };
  const add = (part: PieceTree): void => {
    const area = part.width * part.height;
    if (part.kind === 'split' || part.kind === 'sheets') part.parts.forEach(add);
    else if (part.kind === 'patch') sum.patches += area;
    else if (part.use === 'leftover') sum.leftovers += area;
    else if (part.use === 'scrap') sum.scrap += area;
    else sum.margins += area;
  };
  add(tree);
  return { piece: tree.width * tree.height, ...sum };
}

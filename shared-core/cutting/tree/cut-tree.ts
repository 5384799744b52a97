import type { CutDirection, CutTree, PieceTree, PlacedPatch, RestUse, SheetsTree } from './cut-plan';

/** A rest of the given size; sizes of zero are allowed and vanish in `splitTree`. */
export function restTree(width: number, height: number, use: RestUse = 'scrap'): CutTree {
  return { kind: 'rest', width, height, use };
}

/**
 * Puts parts together: parts without area vanish, parts that split in the same direction are taken up into this one, and
 * a single part stays itself. Parts must share their width (`across`) or height (`along`); none gives a rest of size zero.
 */
export function splitTree(direction: CutDirection, parts: readonly CutTree[]): CutTree {
  const flat = parts
    .filter((part) => part.width > 0 && part.height > 0)
    .flatMap((part) => (part.kind === 'split' && part.direction === direction ? part.parts : [part]));
  const only = flat[0];
  if (only === undefined) return restTree(0, 0);
  if (flat.length === 1) return only;
  const total = (size: (part: CutTree) => number) => flat.reduce((sum, part) => sum + size(part), 0);
  return direction === 'across'
    ? { kind: 'split', direction, width: only.width, height: total((part) => part.height), parts: flat }
    : { kind: 'split', direction, width: total((part) => part.width), height: only.height, parts: flat };
}

/** The same cutting with the fabric turned a quarter: widths and heights, across and along, turned and not change places. */
export function transposeTree(tree: CutTree): CutTree {
  const size = { width: tree.height, height: tree.width };
  switch (tree.kind) {
    case 'patch':
      return { ...tree, ...size, turned: !tree.turned };
    case 'rest':
      return { ...tree, ...size };
    case 'split':
      return {
        ...tree,
        ...size,
        direction: tree.direction === 'across' ? 'along' : 'across',
        parts: tree.parts.map(transposeTree),
      };
  }
}

/** The sheets of a pack; all have the same size, and there is at least one. */
export function sheetsTree(parts: readonly CutTree[]): SheetsTree {
  const height = parts.reduce((sum, part) => sum + part.height, 0);
  return { kind: 'sheets', width: parts[0]!.width, height, parts };
}

/** A part of a tree with its near left corner. */
interface LaidPart {
  readonly part: CutTree;
  readonly x: number;
  readonly y: number;
}

/** The parts of a tree where they lie, its own corner at (x, y); a patch and a rest have none. */
export function laidParts(tree: PieceTree, x: number, y: number): LaidPart[] {
  if (tree.kind === 'patch' || tree.kind === 'rest') return [];
  const isBehind = tree.kind === 'sheets' || tree.direction === 'across';
  let [right, far] = [x, y];
  return tree.parts.map((part) => {
    const laid = { part, x: right, y: far };
    if (isBehind) far += part.height;
    else right += part.width;
    return laid;
  });
}

/** Number of single cuts, fabric unfolded: one less than the parts of every split. */
export function countCuts(tree: CutTree): number {
  if (tree.kind !== 'split') return 0;
  return tree.parts.reduce((sum, part) => sum + countCuts(part), tree.parts.length - 1);
}

/** Number of stages (turns between across and along); a split that only trims one patch free counts as no stage. */
export function countStages(tree: PieceTree): number {
  if (tree.kind === 'sheets') return Math.max(...tree.parts.map(countStages));
  if (tree.kind !== 'split' || isTrim(tree.parts)) return 0;
  return 1 + Math.max(...tree.parts.map(countStages));
}

function isTrim(parts: readonly CutTree[]): boolean {
  return (
    parts.filter((part) => part.kind !== 'rest').length === 1 && parts.some((part) => part.kind === 'patch')
  );
}

/** All patches of the tree with their places, the tree's own corner at (x, y). */
export function placedPatches(tree: PieceTree, x = 0, y = 0): PlacedPatch[] {
  if (tree.kind === 'patch') {
    const { width, height, patch, turned } = tree;
    return [{ x, y, width, height, patch, turned }];
  }
  return laidParts(tree, x, y).flatMap((laid) => placedPatches(laid.part, laid.x, laid.y));
}

/** Copies used of each patch type, by index; `types` is the number of types. */
export function countPatches(tree: CutTree, types: number): number[] {
  const used = new Array<number>(types).fill(0);
  for (const { patch } of placedPatches(tree)) used[patch] = (used[patch] ?? 0) + 1;
  return used;
}

import type { CutDirection, CutTree, PieceTree, RestUse, SheetsTree } from '#core/domain/cutting-plan';
import type { PlacedPatch } from './cut-plan';

/** A rest of the given size. A size of 0 is allowed; `splitTree` drops such a rest. */
export function restTree(width: number, height: number, use: RestUse = 'scrap'): CutTree {
  return { kind: 'rest', width, height, use };
}

/**
 * Joins parts: parts without area are dropped, the parts of a split in the same direction are moved up into this one, and a
 * single part is returned as it is. Parts must have the same width (`across`) or height (`along`). Without parts the result
 * is a rest of size 0.
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

/** The same tree with the fabric turned a quarter: width and height, across and along, turned and unturned are swapped. */
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

/** The parts of a tree with their places. The corner of the tree is at (x, y); a patch and a rest have no parts. */
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

/** The number of single cuts with the fabric unfolded: for every split one less than its parts. */
export function countCuts(tree: CutTree): number {
  if (tree.kind !== 'split') return 0;
  return tree.parts.reduce((sum, part) => sum + countCuts(part), tree.parts.length - 1);
}

/** The number of stages (turns between across and along). A split that only trims a patch does not count. */
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

/** All patches of the tree with their places. The corner of the tree is at (x, y). */
export function placedPatches(tree: PieceTree, x = 0, y = 0): PlacedPatch[] {
  if (tree.kind === 'patch') {
    const { width, height, patch, turned } = tree;
    return [{ x, y, width, height, patch, turned }];
  }
  return laidParts(tree, x, y).flatMap((laid) => placedPatches(laid.part, laid.x, laid.y));
}

/** The copies of each patch type in the tree, by index; `types` is the number of types. */
export function countPatches(tree: CutTree, types: number): number[] {
  const used = new Array<number>(types).fill(0);
  for (const { patch } of placedPatches(tree)) used[patch] = (used[patch] ?? 0) + 1;
  return used;
}

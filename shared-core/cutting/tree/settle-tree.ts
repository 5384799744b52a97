import type { CutTree } from '#core/domain/cutting-plan';
import type { PatchType } from './cut-plan';
import { restTree, splitTree } from './cut-tree';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The least width and height of fabric that the patches of a tree need, with each part moved to the near left. */
export function neededSize(tree: CutTree, patches: readonly PatchType[]): Size {
  if (tree.kind === 'rest') return { width: 0, height: 0 };
  if (tree.kind === 'patch') return patchSize(tree, patches);
  const sizes = tree.parts.map((part) => neededSize(part, patches));
  const sum = (side: keyof Size) => sizes.reduce((total, size) => total + size[side], 0);
  const most = (side: keyof Size) => sizes.reduce((total, size) => Math.max(total, size[side]), 0);
  return tree.direction === 'across'
    ? { width: most('width'), height: sum('height') }
    : { width: sum('width'), height: most('height') };
}

/**
 * Fits a tree that is on a coarse grid or has gaps into a fabric of the given size, with the true sizes of the patches. Parts
 * get the size they need, and every rest is moved to the far or right end. The fabric must be at least `neededSize`.
 */
export function settleTree(
  tree: CutTree,
  patches: readonly PatchType[],
  width: number,
  height: number,
): CutTree {
  if (tree.kind === 'rest') return restTree(width, height);
  if (tree.kind === 'patch') {
    const size = patchSize(tree, patches);
    const row = splitTree('along', [{ ...tree, ...size }, restTree(width - size.width, size.height)]);
    return splitTree('across', [row, restTree(width, height - size.height)]);
  }
  const parts = tree.parts.filter((part) => part.kind !== 'rest');
  const sizes = parts.map((part) => neededSize(part, patches));
  if (tree.direction === 'across') {
    const used = sizes.reduce((sum, size) => sum + size.height, 0);
    const settled = parts.map((part, i) => settleTree(part, patches, width, sizes[i]!.height));
    return splitTree('across', [...settled, restTree(width, height - used)]);
  }
  const used = sizes.reduce((sum, size) => sum + size.width, 0);
  const needed = sizes.reduce((most, size) => Math.max(most, size.height), 0);
  const settled = parts.map((part, i) => settleTree(part, patches, sizes[i]!.width, needed));
  const row = splitTree('along', [...settled, restTree(width - used, needed)]);
  return splitTree('across', [row, restTree(width, height - needed)]);
}

function patchSize(tree: CutTree & { readonly kind: 'patch' }, patches: readonly PatchType[]): Size {
  const { width, height } = patches[tree.patch]!;
  return tree.turned ? { width: height, height: width } : { width, height };
}

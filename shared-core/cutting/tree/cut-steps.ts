import type { CutTree, PieceTree } from '#core/domain/cutting-plan';
import type { Leftover } from './cutting-job';
import { stacksOf } from './cut-order';
import { placedPatches } from './cut-tree';
import { leftoversOf } from './piece-plan';

/** One cut across a whole piece of fabric, or one stack of a pack's sheets, with everything that is then cut from it. */
export interface CutStep {
  /** The parts of the piece's tree that belong to it, in order from the near end. */
  readonly parts: readonly CutTree[];
  /** Whether the parts are sheets of a pack, all cut alike. */
  readonly isStack: boolean;
  /** Its start, measured from the near end of the piece, and its share of the piece's length. */
  readonly from: number;
  readonly length: number;
  /** The patches cut from it, by index; the most frequent first. */
  readonly patches: readonly { readonly patch: number; readonly copies: number }[];
  /** The leftovers worth keeping, with their places on the piece. */
  readonly leftovers: readonly Leftover[];
}

/**
 * The steps in which a piece is cut from its near end: strip by strip, or for a pack in stacks of sheets that are cut alike. A
 * margin or a scrap belongs to the next strip, or to the last strip at the far end. A leftover at the far end is not cut and
 * is no step. `taken` has the number of parts of each of the first steps where these are already settled. A piece that is
 * not cut has no steps.
 */
export function cutSteps(tree: PieceTree, taken: readonly number[] = []): CutStep[] {
  const parts = partsOf(tree);
  const settled = taken.reduce((sum, count) => sum + count, 0);
  const groups: CutTree[][] = [];
  for (const count of taken) {
    const start = groups.reduce((sum, group) => sum + group.length, 0);
    groups.push(parts.slice(start, start + count));
  }
  const isPack = tree.kind === 'sheets';
  if (isPack) groups.push(...stacksOf(parts.slice(settled)).map((stack) => [...stack]));
  else addStrips(groups, parts.slice(settled));
  let from = 0;
  return groups.map((group) => {
    const step = stepOf(group, from, isPack);
    from += step.length;
    return step;
  });
}

function partsOf(tree: PieceTree): readonly CutTree[] {
  if (tree.kind === 'sheets') return tree.parts;
  return tree.kind === 'split' && tree.direction === 'across' ? tree.parts : [tree];
}

function addStrips(groups: CutTree[][], parts: readonly CutTree[]): void {
  const settled = groups.length;
  let waiting: CutTree[] = [];
  for (const part of parts) {
    waiting.push(part);
    if (part.kind === 'rest' && part.use !== 'leftover') continue;
    groups.push(waiting);
    waiting = [];
  }
  if (groups.length > settled && groups.at(-1)?.at(-1)?.kind === 'rest') groups.pop();
  else if (groups.length > 0) groups.at(-1)!.push(...waiting);
}

/** The total length of the steps of a piece. */
export function lengthCut(steps: readonly CutStep[]): number {
  return steps.reduce((sum, { length }) => sum + length, 0);
}

function stepOf(parts: readonly CutTree[], from: number, isStack: boolean): CutStep {
  const counts = new Map<number, number>();
  const leftovers: Leftover[] = [];
  let y = from;
  for (const part of parts) {
    for (const { patch } of placedPatches(part)) counts.set(patch, (counts.get(patch) ?? 0) + 1);
    leftovers.push(...leftoversOf(part, 0, y));
    y += part.height;
  }
  const patches = [...counts].map(([patch, copies]) => ({ patch, copies }));
  return {
    parts,
    isStack,
    from,
    length: y - from,
    patches: patches.toSorted((a, b) => b.copies - a.copies || a.patch - b.patch),
    leftovers,
  };
}

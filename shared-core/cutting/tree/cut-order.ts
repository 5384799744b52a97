import type { CutTree, PieceTree } from '#core/domain/cutting-plan';
import type { CuttingTable, OrderedCut } from './cutting-job';
import { alikeRuns } from './alike-runs';
import { laidParts } from './cut-tree';

/** The number of sheets that are cut in one stack: common practice. */
const SHEETS_IN_STACK = 4;

/** Stacks of sheets that follow one another and are cut alike. */
export function stacksOf(sheets: readonly CutTree[]): readonly (readonly CutTree[])[] {
  return alikeRuns(sheets, SHEETS_IN_STACK).map(({ part, times }) => new Array<CutTree>(times).fill(part));
}

/**
 * The cuts of a tree in the order to make them: the first cuts of the piece, then each part in turn. `done` is the length
 * from the near end that is already cut. Cuts across go through two layers where folding is allowed; sheets of a pack are
 * not folded.
 */
export function orderCuts(tree: PieceTree, table: CuttingTable, done: number): OrderedCut[] {
  if (tree.kind === 'sheets') {
    const flat = { ...table, mayFold: false };
    return laidParts(tree, 0, 0).flatMap(({ part, x, y }) => cutsOf(part, flat, done, { x, y, stage: 1 }));
  }
  return cutsOf(tree, table, done, { x: 0, y: 0, stage: 1 });
}

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly stage: number;
}

function cutsOf(tree: CutTree, table: CuttingTable, done: number, corner: Corner): OrderedCut[] {
  if (tree.kind !== 'split') return [];
  const isAcross = tree.direction === 'across';
  const length = isAcross ? tree.width : tree.height;
  const layers = isAcross && table.mayFold ? 2 : 1;
  const passes = Math.max(1, Math.ceil(length / layers / Math.min(table.rulerLength, table.matLength)));
  const cuts: OrderedCut[] = [];
  const inner: OrderedCut[] = [];
  let { x, y } = corner;
  for (const [index, part] of tree.parts.entries()) {
    inner.push(...cutsOf(part, table, done, { x, y, stage: corner.stage + 1 }));
    if (isAcross) y += part.height;
    else x += part.width;
    if (index === tree.parts.length - 1) continue;
    const at = isAcross ? { x: corner.x, y } : { x, y: corner.y };
    const isDone = isAcross ? y <= done : corner.y + length <= done;
    cuts.push({ direction: tree.direction, ...at, length, stage: corner.stage, layers, passes, isDone });
  }
  return [...cuts, ...inner];
}

/**
 * The number of cuts if strips are folded, so that equal parts side by side are cut two at a time, and sheets are stacked.
 * Without folding it is the number of single cuts.
 */
export function countFoldedCuts(tree: PieceTree, table: CuttingTable): number {
  if (tree.kind === 'sheets') {
    const flat = { ...table, mayFold: false };
    return stacksOf(tree.parts).reduce((sum, [sheet]) => sum + countFoldedCuts(sheet!, flat), 0);
  }
  if (tree.kind !== 'split') return 0;
  const groups = new Map<string, { readonly part: CutTree; count: number }>();
  for (const part of tree.parts) {
    const key = JSON.stringify(part);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { part, count: 1 });
    else group.count++;
  }
  const inPairs = tree.direction === 'along' && table.mayFold;
  let freed = 0;
  let inner = 0;
  for (const { part, count } of groups.values()) {
    const times = inPairs ? Math.ceil(count / 2) : count;
    freed += times;
    inner += times * countFoldedCuts(part, table);
  }
  const plain = tree.parts.length - 1;
  return inner + (inPairs ? Math.max(Math.ceil(plain / 2), freed - 1) : plain);
}

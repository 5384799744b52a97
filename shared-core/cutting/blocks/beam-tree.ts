import type { CutTree } from '#core/domain/cutting-plan';
import type { PatchKinds } from './patch-kinds';
import {
  COLUMN,
  emptyMove,
  isAcrossFirst,
  kindOfMove,
  layMove,
  type MoveCode,
  type MoveRest,
  type MoveRules,
  ROOT_LEVEL,
  shapeOfMove,
  TRIMMED,
} from './beam-move';
import { restTree, splitTree } from '../tree/cut-tree';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A rectangle while moves are replayed: its real size, the size that patches can use, and how its content is cut. */
interface OpenCell extends Size {
  readonly usableWidth: number;
  readonly usableHeight: number;
  readonly level: number;
  content: (() => CutTree) | undefined;
}

/**
 * Replays the moves of a beam search and returns one cut tree for each root. Fabric that no patch can use is trimmed after
 * the block next to it, so it never adds a stage.
 */
export function treesOfMoves(
  rules: MoveRules,
  copies: readonly number[],
  roots: readonly Size[],
  moves: readonly MoveCode[],
): CutTree[] {
  const { kinds } = rules;
  const remaining = [...copies];
  const cells = roots.map((root) => openCell(kinds, root, { ...root, level: ROOT_LEVEL }));
  const open = [...cells];
  const laid = emptyMove();
  for (const move of moves) {
    const cell = popFitting(kinds, remaining, open);
    const type = kinds.type[kindOfMove(move)]!;
    const place = {
      width: cell.usableWidth,
      height: cell.usableHeight,
      level: cell.level,
      remaining: remaining[type]!,
    };
    layMove(laid, rules, move, place);
    remaining[type]! -= laid.copies;
    const block = blockTree(kinds, move, laid.copies);
    const fillsWidth = laid.width === cell.usableWidth;
    const isAcross = isAcrossFirst(move) || fillsWidth;
    // A block as wide as the cell leaves only the rest beyond it, which the search calls inner.
    const isSwapped = fillsWidth && !isAcrossFirst(move);
    const [outer, inner] = isSwapped ? [laid.inner, laid.outer] : [laid.outer, laid.inner];
    const [outerSize, innerSize] = restsBeside(cell, laid, isAcross);
    const outerCell = openCell(kinds, outerSize, outer);
    const innerCell = openCell(kinds, innerSize, inner);
    const [first, second] = isAcross ? (['across', 'along'] as const) : (['along', 'across'] as const);
    cell.content = () =>
      splitTree(first, [splitTree(second, [block, cellTree(innerCell)]), cellTree(outerCell)]);
    open.push(...[outerCell, innerCell].filter((rest) => isUsable(kinds, rest)));
  }
  return cells.map(cellTree);
}

/** The real sizes of the outer and the inner rest of a block in a cell. */
function restsBeside(cell: Size, block: Size, isAcross: boolean): readonly [Size, Size] {
  const width = cell.width - block.width;
  const height = cell.height - block.height;
  return isAcross
    ? [
        { width: cell.width, height },
        { width, height: block.height },
      ]
    : [
        { width, height: cell.height },
        { width: block.width, height },
      ];
}

/** A cell of this real size. `searched` has its size and level in the search. */
function openCell(kinds: PatchKinds, { width, height }: Size, searched: Readonly<MoveRest>): OpenCell {
  return {
    width,
    height,
    usableWidth: kinds.usableWidth[searched.width]!,
    usableHeight: kinds.usableHeight[searched.height]!,
    level: searched.level,
    content: undefined,
  };
}

function isUsable(kinds: PatchKinds, cell: OpenCell): boolean {
  return cell.level !== TRIMMED && kinds.leastHeight[cell.usableWidth]! <= cell.usableHeight;
}

function cellTree(cell: OpenCell): CutTree {
  return cell.content === undefined ? restTree(cell.width, cell.height) : cell.content();
}

/** Removes cells from the stack until a remaining patch fits one, as the search does, and returns that cell. */
function popFitting(kinds: PatchKinds, remaining: readonly number[], open: OpenCell[]): OpenCell {
  for (;;) {
    const cell = open.pop();
    if (cell === undefined) throw new Error('A move of the cutting search has no place.');
    for (let kind = 0; kind < kinds.count; kind++) {
      const fits = kinds.width[kind]! <= cell.usableWidth && kinds.height[kind]! <= cell.usableHeight;
      if (fits && remaining[kinds.type[kind]!]! > 0) return cell;
    }
  }
}

function blockTree(kinds: PatchKinds, move: MoveCode, copies: number): CutTree {
  const kind = kindOfMove(move);
  const patch: CutTree = {
    kind: 'patch',
    width: kinds.width[kind]!,
    height: kinds.height[kind]!,
    patch: kinds.type[kind]!,
    turned: kinds.turned[kind] === 1,
  };
  const direction = shapeOfMove(move) === COLUMN ? 'across' : 'along';
  return splitTree(direction, new Array<CutTree>(copies).fill(patch));
}

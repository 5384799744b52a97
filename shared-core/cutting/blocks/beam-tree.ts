import type { CutTree } from '../tree/cut-plan';
import type { CutLimits } from './beam-move';
import type { PatchKinds } from './patch-kinds';
import { ROOT_LEVEL, TRIMMED, emptyMove, layMove } from './beam-move';
import { restTree, splitTree } from '../tree/cut-tree';

/** A rectangle while moves are played again: real size, the size patches can use, and how to draw its content. */
interface OpenCell {
  readonly width: number;
  readonly height: number;
  readonly usableWidth: number;
  readonly usableHeight: number;
  readonly level: number;
  content: (() => CutTree) | undefined;
}

/**
 * Plays moves of a beam search again and gives one cut tree for each root. Fabric that no patch can use is trimmed after
 * the block it lies beside, so it never adds a stage.
 */
export function treesOfMoves(
  kinds: PatchKinds,
  copies: readonly number[],
  limits: CutLimits,
  roots: readonly { readonly width: number; readonly height: number }[],
  moves: readonly number[],
): CutTree[] {
  const remaining = [...copies];
  const cells = roots.map((root) => openCell(kinds, root.width, root.height, root, ROOT_LEVEL));
  const open = [...cells];
  const laid = emptyMove();
  for (const move of moves) {
    const cell = popFitting(kinds, remaining, open);
    const kind = (move / 6) | 0;
    const type = kinds.type[kind]!;
    layMove(laid, kinds, move, remaining[type]!, cell.usableWidth, cell.usableHeight, cell.level, limits);
    remaining[type]! -= laid.copies;
    const block = blockTree(kinds, kind, (move >> 1) % 3, laid.copies);
    const fillsWidth = laid.width === cell.usableWidth;
    const isAcross = (move & 1) === 1 || fillsWidth;
    const [outer, inner] = isAcross
      ? [
          { width: cell.width, height: cell.height - laid.height },
          { width: cell.width - laid.width, height: laid.height },
        ]
      : [
          { width: cell.width - laid.width, height: cell.height },
          { width: laid.width, height: cell.height - laid.height },
        ];
    // A block as wide as the cell leaves only the rest behind it, which the search calls inner.
    const outerUsable = (move & 1) === 0 && fillsWidth ? 'inner' : 'outer';
    const innerUsable = outerUsable === 'inner' ? 'outer' : 'inner';
    const outerCell = openCell(
      kinds,
      outer.width,
      outer.height,
      sizeOf(laid, outerUsable),
      levelOf(laid, outerUsable),
    );
    const innerCell = openCell(
      kinds,
      inner.width,
      inner.height,
      sizeOf(laid, innerUsable),
      levelOf(laid, innerUsable),
    );
    cell.content = isAcross
      ? () => splitTree('across', [splitTree('along', [block, cellTree(innerCell)]), cellTree(outerCell)])
      : () => splitTree('along', [splitTree('across', [block, cellTree(innerCell)]), cellTree(outerCell)]);
    for (const rest of [outerCell, innerCell]) {
      if (rest.level !== TRIMMED && kinds.leastHeight[rest.usableWidth]! <= rest.usableHeight)
        open.push(rest);
    }
  }
  return cells.map(cellTree);
}

function sizeOf(
  laid: ReturnType<typeof emptyMove>,
  which: 'outer' | 'inner',
): { width: number; height: number } {
  return which === 'outer'
    ? { width: laid.outerWidth, height: laid.outerHeight }
    : { width: laid.innerWidth, height: laid.innerHeight };
}

function levelOf(laid: ReturnType<typeof emptyMove>, which: 'outer' | 'inner'): number {
  return which === 'outer' ? laid.outerLevel : laid.innerLevel;
}

function openCell(
  kinds: PatchKinds,
  width: number,
  height: number,
  searched: { readonly width: number; readonly height: number },
  level: number,
): OpenCell {
  return {
    width,
    height,
    usableWidth: kinds.usableWidth[searched.width]!,
    usableHeight: kinds.usableHeight[searched.height]!,
    level,
    content: undefined,
  };
}

function cellTree(cell: OpenCell): CutTree {
  return cell.content === undefined ? restTree(cell.width, cell.height) : cell.content();
}

/** Takes the topmost cell that a remaining patch fits off the stack, as the search did. */
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

function blockTree(kinds: PatchKinds, kind: number, shape: number, copies: number): CutTree {
  const patch: CutTree = {
    kind: 'patch',
    width: kinds.width[kind]!,
    height: kinds.height[kind]!,
    patch: kinds.type[kind]!,
    turned: kinds.turned[kind] === 1,
  };
  return splitTree(shape === 2 ? 'across' : 'along', new Array<CutTree>(copies).fill(patch));
}

import { type OpenLine, type OpenList, mark } from '../list/open-list';
import { readDiagonals, readTriangleCount } from '../parts/read-diagonals';

/** `cut twice on the diagonal` is said of the squares before it, on this line or the one above. */
export function diagonalStep(line: OpenLine, list: OpenList, at: number): number | null {
  const read = readDiagonals(line.tokens, at);
  if (read === null) return null;
  line.kind = 'cut';
  const { cuts, isOfSeveral, isOfAll } = read.value;
  const patch = list.lastItem;
  const named = line.sentence.length > 0 ? line.sentence : list.lastSentence;
  const open = named.filter(({ diagonals }) => diagonals === 0);
  // `All` on a line of its own may be more than the patches of the line above.
  const isOfMore = isOfAll && patch?.line !== line;
  if (patch === null || patch.diagonals > 0 || isOfMore || (isOfSeveral && open.length > 1)) {
    mark(line, 'which-patches', at, read.next);
    return read.next;
  }
  if (cuts === null) mark(line, 'once-or-twice', at, read.next);
  patch.diagonals = cuts ?? 1;
  return read.next;
}

/** `to make (48) half-square triangles`: checked against the squares and their cuts. */
export function triangleCountStep(line: OpenLine, list: OpenList, at: number): number | null {
  const read = readTriangleCount(line.tokens, at);
  const patch = list.lastItem;
  if (read === null || patch === null) return null;
  const gives = patch.diagonals === 0 ? null : patch.cut * 2 * patch.diagonals;
  if (gives === null) mark(line, 'once-or-twice', at, read.next);
  else if (gives !== read.value) mark(line, 'count-differs', at, read.next);
  return read.next;
}

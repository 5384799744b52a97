import { alikeRuns } from './alike-runs';
import type { CutDirection, CutTree, RestUse } from '#core/domain/cutting-plan';

/** One line of the list to cut by: equal parts, cut one after the other. */
export interface CutLine {
  /** 0 for parts cut from the fabric itself, one more for each turn of direction. */
  readonly depth: number;
  readonly direction: CutDirection;
  /** From cut to cut, 1/320 mm. */
  readonly size: number;
  readonly times: number;
  /** The number of equal parts that are each cut like this. */
  readonly alike: number;
  readonly result:
    | { readonly kind: 'patch'; readonly patch: number; readonly turned: boolean }
    | { readonly kind: 'rest'; readonly use: RestUse; readonly width: number; readonly height: number }
    | { readonly kind: 'part' };
}

/**
 * The cuts of some parts of a piece in the order to make them: a strip, then the lengths it is cut into, then the trims. Parts
 * that are cut alike share their lines. Without parts the list is empty.
 */
export function cutList(parts: readonly CutTree[]): readonly CutLine[] {
  return linesOf(parts, 'across', 0, 1);
}

function linesOf(
  parts: readonly CutTree[],
  direction: CutDirection,
  depth: number,
  alike: number,
): readonly CutLine[] {
  return alikeRuns(parts).flatMap(({ part, times }) => {
    const size = direction === 'across' ? part.height : part.width;
    const line: CutLine = { depth, direction, size, times, alike, result: resultOf(part) };
    return part.kind === 'split'
      ? [line, ...linesOf(part.parts, part.direction, depth + 1, times * alike)]
      : [line];
  });
}

function resultOf(part: CutTree): CutLine['result'] {
  switch (part.kind) {
    case 'patch':
      return { kind: 'patch', patch: part.patch, turned: part.turned };
    case 'rest':
      return { kind: 'rest', use: part.use, width: part.width, height: part.height };
    case 'split':
      return { kind: 'part' };
  }
}

import type { PatchKinds } from './patch-kinds';

/** What a layout may do: 0 stages means any number; the longest cuts keep within ruler and mat. */
export interface CutLimits {
  readonly maxStages: number;
  readonly longestAcross: number;
  readonly longestAlong: number;
}

export const NO_LIMITS: CutLimits = { maxStages: 0, longestAcross: Infinity, longestAlong: Infinity };

/** Level of an uncut fabric: first stage, cut across. */
export const ROOT_LEVEL = 2;

/** Bit 0: the first cut runs across (else along); the rest: 3 x kind + 0 one patch, 1 a row of patches, 2 a column. */
export type MoveCode = number;

/**
 * A block of equal patches laid into the near left corner of a rectangle, and the two rectangles left over. The outer one
 * has a full edge of the old rectangle, the inner one lies beside the block and is filled first.
 *
 *   along first:  +---+-------+     across first: +-----------+
 *                 | i |       |                   |     o     |
 *                 +---+   o   |                   +---+-------+
 *                 | B |       |                   | B |   i   |
 *                 +---+-------+                   +---+-------+
 */
export interface LaidMove {
  copies: number;
  width: number;
  height: number;
  outerWidth: number;
  outerHeight: number;
  outerLevel: number;
  innerWidth: number;
  innerHeight: number;
  innerLevel: number;
}

export function emptyMove(): LaidMove {
  return {
    copies: 0,
    width: 0,
    height: 0,
    outerWidth: 0,
    outerHeight: 0,
    outerLevel: 0,
    innerWidth: 0,
    innerHeight: 0,
    innerLevel: 0,
  };
}

/**
 * Works a move out into `laid` and says whether the limits allow it. Rectangles that the stages no longer reach get level
 * 255: they are trimmed off. `remaining` is how many copies of the kind's type are left; the kind must fit.
 */
export function layMove(
  laid: LaidMove,
  kinds: PatchKinds,
  move: MoveCode,
  remaining: number,
  width: number,
  height: number,
  level: number,
  limits: CutLimits,
): boolean {
  const across = (move & 1) === 1;
  const shape = (move >> 1) % 3;
  const kind = (move / 6) | 0;
  let blockWidth = kinds.width[kind]!;
  let blockHeight = kinds.height[kind]!;
  let copies = 1;
  if (shape === 1) {
    copies = Math.min(remaining, (width / blockWidth) | 0);
    blockWidth *= copies;
  } else if (shape === 2) {
    copies = Math.min(remaining, (height / blockHeight) | 0);
    blockHeight *= copies;
  }
  if (shape !== 0 && copies < 2) return false;
  laid.copies = copies;
  laid.width = blockWidth;
  laid.height = blockHeight;
  if (across) {
    laid.outerWidth = width;
    laid.outerHeight = height - blockHeight;
    laid.innerWidth = width - blockWidth;
    laid.innerHeight = blockHeight;
    if (laid.outerHeight > 0 && width > limits.longestAcross && blockWidth < width) return false;
  } else {
    laid.outerWidth = width - blockWidth;
    laid.outerHeight = height;
    laid.innerWidth = blockWidth;
    laid.innerHeight = height - blockHeight;
    if (laid.outerWidth > 0 && height > limits.longestAlong && blockHeight < height) return false;
  }
  laid.outerLevel = 0;
  laid.innerLevel = 0;
  return limits.maxStages === 0 || staysInStages(laid, across, shape, level, limits.maxStages);
}

/** Level of a rectangle that no stage reaches any more. */
export const TRIMMED = 255;

const ACROSS = 0;
const ALONG = 1;

function staysInStages(laid: LaidMove, across: boolean, shape: number, level: number, most: number): boolean {
  const first = across ? ACROSS : ALONG;
  const isSplit = (across ? laid.outerHeight : laid.outerWidth) > 0;
  const hasInner = (across ? laid.innerWidth : laid.innerHeight) > 0;
  let block = level;
  if (isSplit) {
    block = levelAfter(level, first);
    if (block >> 1 > most) return false;
    laid.outerLevel = block;
  }
  if (hasInner) {
    const inner = levelAfter(block, 1 - first);
    if (inner >> 1 > most) {
      laid.innerLevel = TRIMMED;
      return shape === 0;
    }
    laid.innerLevel = inner;
    block = inner;
  }
  return shape === 0 || levelAfter(block, shape === 1 ? ALONG : ACROSS) >> 1 <= most;
}

/** Cutting on in the direction a rectangle came from costs no further stage. */
function levelAfter(level: number, direction: number): number {
  const turns = (level & 1) !== direction;
  return ((level >> 1) + (turns ? 1 : 0)) * 2 + direction;
}

import type { CutLimits } from '../tree/cut-plan';
import type { PatchKinds } from './patch-kinds';

/**
 * One move of the beam search as a whole number, so that thousands of them fit into typed arrays: which kind of patch, in
 * which shape of block, and whether the first cut next to the block runs across the fabric.
 */
export type MoveCode = number;

/** A block is one patch, a row of patches side by side, or a column of patches one above the other. */
export type BlockShape = typeof SINGLE | typeof ROW | typeof COLUMN;
export const SINGLE = 0;
const ROW = 1;
export const COLUMN = 2;

const SHAPES = 3;
const FIRST_CUTS = 2;

export function encodeMove(kind: number, shape: BlockShape, isAcrossFirst: boolean): MoveCode {
  return (kind * SHAPES + shape) * FIRST_CUTS + (isAcrossFirst ? 1 : 0);
}

export function kindOfMove(move: MoveCode): number {
  return Math.floor(move / (SHAPES * FIRST_CUTS));
}

export function shapeOfMove(move: MoveCode): BlockShape {
  return (Math.floor(move / FIRST_CUTS) % SHAPES) as BlockShape;
}

export function isAcrossFirst(move: MoveCode): boolean {
  return move % FIRST_CUTS === 1;
}

/**
 * The cuts that lead to a rectangle, as one byte: the number of stages and the direction of the last one. Cutting
 * again in the same direction does not add a stage.
 */
type CutLevel = number;

const ACROSS = 0;
const ALONG = 1;
type Direction = typeof ACROSS | typeof ALONG;

function cutLevel(stages: number, direction: Direction): CutLevel {
  return stages * 2 + direction;
}

function stagesOf(level: CutLevel): number {
  return level >> 1;
}

function levelAfter(level: CutLevel, direction: Direction): CutLevel {
  const isSameDirection = (level & 1) === direction;
  return cutLevel(stagesOf(level) + (isSameDirection ? 0 : 1), direction);
}

/** Level of uncut fabric: its first stage is cut across. */
export const ROOT_LEVEL: CutLevel = cutLevel(1, ACROSS);

/** Level of a rectangle that cannot be cut within the stages: it is trimmed off. */
export const TRIMMED: CutLevel = 255;

/** A rectangle that is left after a move; empty when a side is 0. */
export interface MoveRest {
  width: number;
  height: number;
  level: CutLevel;
}

/**
 * A block of equal patches in the near left corner of a rectangle, and the two rectangles left over. The outer one has a
 * full edge of the old rectangle; the inner one is beside the block and is filled first.
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
  readonly outer: MoveRest;
  readonly inner: MoveRest;
}

export function emptyMove(): LaidMove {
  const rest = (): MoveRest => ({ width: 0, height: 0, level: 0 });
  return { copies: 0, width: 0, height: 0, outer: rest(), inner: rest() };
}

/** Where a move is tried: the open rectangle, and how many copies of the move's patch are left. */
export interface MovePlace {
  width: number;
  height: number;
  level: CutLevel;
  remaining: number;
}

/** What all moves of a search share. */
export interface MoveRules {
  readonly kinds: PatchKinds;
  readonly limits: CutLimits;
}

/**
 * Computes the result of a move, writes it to `laid`, and returns whether the limits allow the move. A rest that cannot be
 * cut within the stages gets the level `TRIMMED`. The kind must fit the place.
 */
export function layMove(laid: LaidMove, rules: MoveRules, move: MoveCode, place: MovePlace): boolean {
  const { limits } = rules;
  if (!layBlock(laid, rules.kinds, move, place)) return false;
  const isAcross = isAcrossFirst(move);
  const { outer, inner } = laid;
  if (isAcross) {
    outer.width = place.width;
    outer.height = place.height - laid.height;
    inner.width = place.width - laid.width;
    inner.height = laid.height;
    if (outer.height > 0 && place.width > limits.longestAcross && laid.width < place.width) return false;
  } else {
    outer.width = place.width - laid.width;
    outer.height = place.height;
    inner.width = laid.width;
    inner.height = place.height - laid.height;
    if (outer.width > 0 && place.height > limits.longestAlong && laid.height < place.height) return false;
  }
  outer.level = 0;
  inner.level = 0;
  return limits.maxStages === 0 || staysInStages(laid, move, place.level, limits.maxStages);
}

/** Writes the size of the block and its number of patches; false for a row or a column with a single patch. */
function layBlock(laid: LaidMove, kinds: PatchKinds, move: MoveCode, place: MovePlace): boolean {
  const kind = kindOfMove(move);
  const shape = shapeOfMove(move);
  laid.copies = 1;
  laid.width = kinds.width[kind]!;
  laid.height = kinds.height[kind]!;
  if (shape === SINGLE) return true;
  if (shape === ROW) {
    laid.copies = Math.min(place.remaining, Math.floor(place.width / laid.width));
    laid.width *= laid.copies;
  } else {
    laid.copies = Math.min(place.remaining, Math.floor(place.height / laid.height));
    laid.height *= laid.copies;
  }
  return laid.copies >= 2;
}

/** Writes the levels of the rests and returns whether the block itself can be cut in `most` stages. */
function staysInStages(laid: LaidMove, move: MoveCode, level: CutLevel, most: number): boolean {
  const shape = shapeOfMove(move);
  const [first, second] = isAcrossFirst(move) ? ([ACROSS, ALONG] as const) : ([ALONG, ACROSS] as const);
  const isSplit = (first === ACROSS ? laid.outer.height : laid.outer.width) > 0;
  const hasInner = (first === ACROSS ? laid.inner.width : laid.inner.height) > 0;
  let block = level;
  if (isSplit) {
    block = levelAfter(level, first);
    if (stagesOf(block) > most) return false;
    laid.outer.level = block;
  }
  if (hasInner) {
    const inner = levelAfter(block, second);
    if (stagesOf(inner) > most) {
      laid.inner.level = TRIMMED;
      return shape === SINGLE;
    }
    laid.inner.level = inner;
    block = inner;
  }
  return shape === SINGLE || stagesOf(levelAfter(block, shape === ROW ? ALONG : ACROSS)) <= most;
}

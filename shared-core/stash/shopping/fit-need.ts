import type { FabricPieceId } from '#core/domain/ids';
import type { NeedAmount } from '#core/domain/need';
import { cutFrom, isNothing, type PatchTurning, sizeOfNeed } from './fill-rows';

/** A piece of fabric to try. `free` is what the project may use, `ownHold` the part of it set aside already. In 1/320 mm. */
interface PieceToTry {
  readonly id: FabricPieceId;
  readonly width: number;
  readonly turning: PatchTurning;
  readonly free: number;
  readonly ownHold: number;
}

/** How well a fabric meets a need. */
export interface NeedFit {
  /** Enough in one piece, enough only from several pieces, or not enough. */
  readonly verdict: 'one-piece' | 'several-pieces' | 'short';
  /** What would be cut from which piece, and how much of it is not set aside yet. */
  readonly takes: readonly {
    readonly pieceId: FabricPieceId;
    readonly length: number;
    readonly more: number;
  }[];
  /** What is still needed; nothing when it is enough. */
  readonly short: NeedAmount;
  /** Free area left on the pieces it is cut from, (1/320 mm)². */
  readonly leftOver: number;
}

/** Tries a fabric's pieces: the single piece that is enough and leaves least, else several, largest first. */
export function fitNeed(amount: NeedAmount, pieces: readonly PieceToTry[]): NeedFit {
  const single = pieces
    .map((piece) => fitPieces(amount, [piece], 'one-piece'))
    .filter(({ verdict }) => verdict === 'one-piece')
    .toSorted((one, other) => one.leftOver - other.leftOver)[0];
  if (single !== undefined) return single;
  return fitPieces(
    amount,
    pieces.toSorted((one, other) => other.free * other.width - one.free * one.width),
    'several-pieces',
  );
}

function fitPieces(
  amount: NeedAmount,
  pieces: readonly PieceToTry[],
  verdict: Exclude<NeedFit['verdict'], 'short'>,
): NeedFit {
  const takes: NeedFit['takes'][number][] = [];
  let [short, leftOver] = [amount, 0];
  for (const { id, width, turning: turning, free, ownHold } of pieces) {
    if (isNothing(short)) break;
    const cut = cutFrom(short, { width, turning, length: free });
    if (cut.length === 0 && !isNothing(cut.left)) continue;
    takes.push({ pieceId: id, length: cut.length, more: Math.max(0, cut.length - ownHold) });
    leftOver += width * (free - cut.length);
    short = cut.left;
  }
  return { verdict: isNothing(short) ? verdict : 'short', takes, short, leftOver };
}

const ORDER: readonly NeedFit['verdict'][] = ['one-piece', 'several-pieces', 'short'];

/** The better fit first: enough before short, then the least short, then the least left over. */
export function compareFits(one: NeedFit, other: NeedFit): number {
  return (
    ORDER.indexOf(one.verdict) - ORDER.indexOf(other.verdict) ||
    sizeOfNeed(one.short) - sizeOfNeed(other.short) ||
    one.leftOver - other.leftOver
  );
}

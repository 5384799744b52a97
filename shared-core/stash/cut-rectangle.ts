import type { Length } from '#core/units/length';
import { lengthSubtract } from '#core/units/length';

/** A rectangle of fabric: `width` across it, from selvage to selvage, and `length` along it. */
interface Rectangle {
  readonly width: Length;
  readonly length: Length;
}

/**
 * One way to cut a rectangle off the corner of a piece. across: the first cut runs across the whole width, and the rest of the piece keeps
 * that width. along: it runs along the whole length, and nothing of the piece stays but its leftovers.
 */
export interface RectangleCut {
  readonly first: 'across' | 'along';
  /** What the cut takes off the length of the piece. */
  readonly length: Length;
  /** What is left of that, as the ledger keeps it. */
  readonly leftovers: readonly Rectangle[];
  /** What stays of the piece itself; null for nothing. */
  readonly stays: Rectangle | null;
}

/**
 * The ways to cut a rectangle off a piece, exact; one where both cuts leave the same. None for a rectangle that is larger than the piece.
 */
export function waysToCut(piece: Rectangle, wanted: Rectangle): readonly RectangleCut[] {
  if (wanted.width > piece.width || wanted.length > piece.length) return [];
  const besides = lengthSubtract(piece.width, wanted.width);
  const beyond = lengthSubtract(piece.length, wanted.length);
  const across: RectangleCut = {
    first: 'across',
    length: wanted.length,
    leftovers: besides > 0 ? [{ width: besides, length: wanted.length }] : [],
    stays: beyond > 0 ? { width: piece.width, length: beyond } : null,
  };
  if (besides === 0 || beyond === 0) return [across];
  const along: RectangleCut = {
    first: 'along',
    length: piece.length,
    leftovers: [
      { width: besides, length: piece.length },
      { width: wanted.width, length: beyond },
    ],
    stays: null,
  };
  return [across, along];
}

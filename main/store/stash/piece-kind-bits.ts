import type { PieceKind } from '#core/domain/stash';

/** The bit of each kind in `shelf.kinds`. The same numbers are in the schema, so they never change; a new kind takes the next bit. */
export const PIECE_KIND_BITS: Readonly<Record<PieceKind, number>> = {
  yardage: 1,
  'fat-quarter': 2,
  'fat-eighth': 4,
  'precut-strips': 8,
  'precut-squares': 16,
  panel: 32,
  leftover: 64,
  'bias-made-up': 128,
  backing: 256,
  'wide-backing': 512,
  batting: 1024,
  'batting-package': 2048,
  thread: 4096,
  needles: 8192,
  notions: 16384,
};

/** True of a row of `shelf` with a piece of one of the kinds; the question mark is their `kindBits`. */
export const HAS_KIND = 'kinds & ? > 0';

export function kindBits(kinds: readonly PieceKind[]): number {
  return kinds.reduce((bits, kind) => bits | PIECE_KIND_BITS[kind], 0);
}

export function hasKind(bits: number, kind: PieceKind): boolean {
  return (bits & PIECE_KIND_BITS[kind]) !== 0;
}

import { z } from 'zod';
import { type Length, lengthFromUnits, UNITS_PER_MILLIMETER } from '#core/units/length';
import type { StashKindId } from './ids';
import { type PieceKind, pieceKindSchema, pieceLengthSchema, pieceWidthSchema } from './stash';

/**
 * How a kind is told: by the length that is left of it, as one piece with a size, as a number of pieces of one size, or as a
 * number of things that have none.
 */
export type KindMeasure = 'length' | 'piece' | 'pack' | 'count';

const MEASURES: Readonly<Record<PieceKind, KindMeasure>> = {
  yardage: 'length',
  'fat-quarter': 'piece',
  'fat-eighth': 'piece',
  'precut-strips': 'pack',
  'precut-squares': 'pack',
  panel: 'piece',
  leftover: 'piece',
  'bias-made-up': 'length',
  backing: 'length',
  'wide-backing': 'length',
  batting: 'length',
  'batting-package': 'piece',
  thread: 'count',
  needles: 'count',
  notions: 'count',
};

export function measureOfKind(kind: PieceKind): KindMeasure {
  return MEASURES[kind];
}

/**
 * What the ledger writes for one thing that is counted and not measured: a millimeter of a width of a millimeter, so that
 * half a spool can be used and no fabric is claimed by it.
 */
export const ONE_THING: Length = lengthFromUnits(UNITS_PER_MILLIMETER);

/** One of the maker's kinds with its usual size; `count` is how many come together in a pack. Null where none is usual. */
export const stashKindDetailsSchema = z
  .object({
    form: pieceKindSchema,
    name: z.string().trim().min(1).max(60),
    width: pieceWidthSchema.nullable(),
    length: pieceLengthSchema.nullable(),
    count: z.int().min(1).max(10_000).nullable(),
    isHidden: z.boolean(),
  })
  .readonly();
export type StashKindDetails = z.infer<typeof stashKindDetailsSchema>;

export interface StashKind extends StashKindDetails {
  readonly id: StashKindId;
}

/** How many there are in `length` of a piece whose one measures `unitLength`, in hundredths rounded to the nearest; exact for whole ones. */
export function countOfLength(length: number, unitLength: Length): number {
  return Number((length / unitLength).toFixed(2));
}

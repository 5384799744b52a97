import { z } from 'zod';
import { type Length, lengthFromInches, lengthFromUnits, UNITS_PER_MILLIMETER } from '#core/units/length';
import type { StashKindId } from './ids';
import { type PieceKind, pieceKindSchema, pieceLengthSchema, pieceWidthSchema } from './stash';

/**
 * How a kind is measured: by the length that is left, as one piece with a size, as a number of pieces of one size, or as a
 * number of items without a size.
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

/** The least sides of a whole piece of the kinds that are sold in one size (common practice: 18 by 20 to 22 in, and 9 by 20 to 22 in). */
const WHOLE_SIDES: Readonly<Partial<Record<PieceKind, { readonly short: Length; readonly long: Length }>>> = {
  'fat-quarter': { short: lengthFromInches(17), long: lengthFromInches(19) },
  'fat-eighth': { short: lengthFromInches(8.5), long: lengthFromInches(19) },
};

/** Whether so much was cut off a piece that it is only a leftover of its kind. */
export function isCutDown(kind: PieceKind, width: number, length: number): boolean {
  const whole = WHOLE_SIDES[kind];
  if (whole === undefined) return false;
  return Math.min(width, length) < whole.short || Math.max(width, length) < whole.long;
}

/**
 * What the ledger stores for one item that is counted, not measured: 1 mm at a width of 1 mm, so that half a spool can be
 * used and the item claims no fabric.
 */
export const ONE_THING: Length = lengthFromUnits(UNITS_PER_MILLIMETER);

/** One of the maker's kinds with its usual size; `count` is the number in a pack. Null when there is no usual value. */
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

/** The number of items in `length` when one item is `unitLength` long, rounded to the nearest hundredth; exact for whole items. */
export function countOfLength(length: number, unitLength: Length): number {
  return Number((length / unitLength).toFixed(2));
}

import { z } from 'zod';
import { type Length, lengthFromUnits, lengthFromMeters } from '#core/units/length';
import { lengthField } from './fields';
import { placePathSchema } from './place';
import type { FabricPieceId, FabricId, LedgerEntryId, PhotoId, StashKindId } from './ids';

/** Which way the print runs; a directional print decides how a patch is cut. */
export const printDirectionSchema = z.enum(['any', 'one-way', 'two-way']);
export type PrintDirection = z.infer<typeof printDirectionSchema>;

/** Whether the print runs along the length of a piece or, when the piece was turned, across it. */
export const printRunsSchema = z.enum(['along', 'across']);
export type PrintRuns = z.infer<typeof printRunsSchema>;

export const pieceKindSchema = z.enum([
  'yardage',
  'fat-quarter',
  'fat-eighth',
  'precut-strips',
  'precut-squares',
  'panel',
  'leftover',
  'bias-made-up',
  'backing',
  'wide-backing',
  'batting',
  'batting-package',
  'thread',
  'needles',
  'notions',
]);
export type PieceKind = z.infer<typeof pieceKindSchema>;

/** Unbleached: the color of a fabric whose color is unknown. */
export const NO_COLOR = '#d8c9a8';

/** A bolt may be 300 m long. */
export const pieceLengthSchema = lengthField({
  title: 'Length',
  maximum: lengthFromMeters(300),
});
export const pieceWidthSchema = lengthField({ title: 'Width' });

const shortText = z.string().trim().max(120);

/**
 * What the maker enters about a fabric. `swatch` is the color it is drawn in without a photo: six hex digits with a hash.
 * `place` is where it is stored, from the room down: `Sewing room, shelf 2`.
 */
export const fabricDetailsSchema = z
  .object({
    name: z.string().trim().min(1).max(120),
    print: shortText,
    colorWords: shortText,
    fiber: shortText,
    direction: printDirectionSchema,
    width: pieceWidthSchema,
    isWashed: z.boolean(),
    supplier: shortText,
    place: placePathSchema,
    swatch: z.string().regex(/^#[0-9a-f]{6}$/),
    notes: z.string().max(5_000),
  })
  .readonly();
export type FabricDetails = z.infer<typeof fabricDetailsSchema>;

export interface Fabric extends FabricDetails {
  readonly id: FabricId;
  readonly photoId: PhotoId | null;
  readonly createdAt: number;
}

/**
 * A measured rectangle of one fabric. `there` and `held` are sums of its ledger, `valueMinor` what is left of its cost;
 * null if it is not known what it cost.
 * For items counted by number, `unitLength` is the length of one; otherwise null. `place` is where the piece is stored when
 * that is not with the rest of its fabric; otherwise empty.
 */
export interface FabricPiece {
  readonly id: FabricPieceId;
  readonly fabricId: FabricId;
  readonly kind: PieceKind;
  readonly kindId: StashKindId | null;
  readonly unitLength: Length | null;
  readonly place: string;
  readonly printRuns: PrintRuns;
  readonly width: Length;
  readonly there: Length;
  readonly held: Length;
  readonly valueMinor: number | null;
}

/**
 * The length of a piece that is free: there and not set aside. More may be set aside than is there; then nothing is free. To a project
 * its own hold is free too.
 */
export function freeOf(
  { there, held }: { readonly there: number; readonly held: number },
  ownHold = 0,
): Length {
  return lengthFromUnits(Math.max(0, there - held + ownHold));
}

/** Whether a length of fabric counted in items is a whole number of items; true of fabric that is not counted. */
export function isWholeCount(length: number, unitLength: number | null): boolean {
  return unitLength === null || length % unitLength === 0;
}

/** What fabric costs to buy: `minor` for an area in (1/320 mm)². */
export interface StashPrice {
  readonly minor: number;
  readonly area: number;
}

export const entryKindSchema = z.enum([
  'bought',
  'set-aside',
  'released',
  'cut',
  'leftover',
  'discarded',
  'counted',
  'taken-back',
]);
export type EntryKind = z.infer<typeof entryKindSchema>;

/**
 * One line of the ledger, never edited. What is there, what is set aside and what it cost are always sums of entries.
 * Entries of one act (a cut and its leftovers) share a booking and are undone together.
 */
export interface LedgerEntry {
  readonly id: LedgerEntryId;
  readonly pieceId: FabricPieceId;
  readonly kind: EntryKind;
  /** Change of the piece's length at its full width, negative when fabric left it, in 1/320 mm. */
  readonly lengthChange: number;
  /** Change of the length set aside for the booking's project, negative when it became free, in 1/320 mm. */
  readonly heldChange: number;
  /**
   * Change of the piece's value in minor units, negative when value left it; a project's cost is the value that left for it. Null if it is
   * not known what the piece cost.
   */
  readonly costChange: number | null;
  /** The entry this one undoes. */
  readonly reverses: LedgerEntryId | null;
}

import { z } from 'zod';
import type { ChannelInput } from '#core/contract/channels';
import { partialDateSchema } from '#core/domain/dates';
import { lengthField } from '#core/domain/fields';
import { type FabricId, stashKindIdSchema } from '#core/domain/ids';
import {
  pieceKindSchema,
  type PieceKind,
  pieceLengthSchema,
  type Fabric,
  type FabricDetails,
  NO_COLOR,
  printDirectionSchema,
} from '#core/domain/stash';
import { measureOfKind, ONE_THING, type StashKind } from '#core/domain/stash-kind';
import { type Length, lengthFromInches, lengthFromUnits } from '#core/units/length';
import type { FabricSize } from '#core/units/parse-fabric-size';
import type { PartialDate } from '#core/units/partial-date';

const width = lengthField({ title: 'Width' });

const fabricDraftSchema = z.object({
  name: z.string(),
  print: z.string(),
  colorWords: z.string(),
  fiber: z.string(),
  direction: printDirectionSchema,
  width,
  isWashed: z.boolean(),
  supplier: z.string(),
  place: z.string(),
  swatch: z.string(),
  notes: z.string(),
});

/** A purchase in the form. Without a size or number nothing is booked; what it cost and when it was bought may be not known. */
const pieceDraftSchema = z.object({
  kind: pieceKindSchema,
  kindId: stashKindIdSchema.nullable(),
  /** The size of one item for packs; things that are only counted have none. */
  size: z.object({ width, length: pieceLengthSchema }).nullable(),
  count: z.int().nullable(),
  costMinor: z.int().nullable(),
  on: partialDateSchema.nullable(),
  place: z.string(),
  note: z.string(),
});
export type PieceDraft = z.infer<typeof pieceDraftSchema>;

const newFabricDraftSchema = z.object({ fabric: fabricDraftSchema, piece: pieceDraftSchema });
export type NewFabricDraft = z.infer<typeof newFabricDraftSchema>;

export function isNewFabricDraft(stored: unknown): stored is NewFabricDraft {
  return newFabricDraftSchema.safeParse(stored).success;
}

/** A fabric of the workshop's usual width. Most fabric entered is old, so when it was bought is not known. */
export function emptyDraft(usualWidth: Length): NewFabricDraft {
  const fabric: FabricDetails = {
    name: '',
    print: '',
    colorWords: '',
    fiber: 'cotton',
    direction: 'any',
    width: usualWidth,
    isWashed: false,
    supplier: '',
    place: '',
    swatch: NO_COLOR,
    notes: '',
  };
  return { fabric, piece: emptyPiece(null) };
}

export function emptyPiece(on: PartialDate | null): PieceDraft {
  return { kind: 'yardage', kindId: null, size: null, count: null, costMinor: null, on, place: '', note: '' };
}

/** The details of a saved fabric, to be changed. */
export function detailsOf(fabric: Fabric): FabricDetails {
  const { name, print, colorWords, fiber, direction, width: across } = fabric;
  const { isWashed, supplier, place, swatch, notes } = fabric;
  return {
    name,
    print,
    colorWords,
    fiber,
    direction,
    width: across,
    isWashed,
    supplier,
    place,
    swatch,
    notes,
  };
}

/** The draft with changed fabric details. A piece as wide as the fabric follows a change of its width. */
export function withFabric(draft: NewFabricDraft, fabric: FabricDetails): NewFabricDraft {
  const { size } = draft.piece;
  const isFullWidth = size !== null && size.width === draft.fabric.width;
  return {
    fabric,
    piece: isFullWidth ? { ...draft.piece, size: { ...size, width: fabric.width } } : draft.piece,
  };
}

const FAT_WIDTH = lengthFromInches(22);

/** The kind a size implies, if no other kind was chosen: `FQ` is a fat quarter. */
export function kindOfSize(chosen: PieceKind, size: FabricSize): PieceKind {
  if (chosen !== 'yardage' || size.width !== FAT_WIDTH) return chosen;
  if (size.length === lengthFromInches(18)) return 'fat-quarter';
  return size.length === lengthFromInches(9) ? 'fat-eighth' : chosen;
}

/** The piece with another kind. A size or number that came from the kind before is replaced by that of the new kind. */
export function withKind(piece: PieceDraft, kind: StashKind, before: StashKind | null): PieceDraft {
  const size = usualSize(kind);
  const isUntouched = piece.size === null || sameSize(piece.size, before && usualSize(before));
  const isCountUntouched = piece.count === null || piece.count === before?.count;
  return {
    ...piece,
    kind: kind.form,
    kindId: kind.id,
    size: isUntouched ? size : piece.size,
    count: isCountUntouched ? kind.count : piece.count,
  };
}

function usualSize({ width: across, length }: StashKind): FabricSize | null {
  return across === null || length === null ? null : { width: across, length };
}

function sameSize(one: FabricSize, other: FabricSize | null): boolean {
  return other !== null && one.width === other.width && one.length === other.length;
}

/** The booking for a purchase; null while its size or number is missing. */
export function purchaseOf(piece: PieceDraft, fabricId: FabricId): ChannelInput<'ledger:buy'> | null {
  const bought = boughtPiece(piece);
  return bought === null ? null : { fabricId, ...bought };
}

/** The same for a piece whose fabric may not be saved yet. */
export function boughtPiece(piece: PieceDraft) {
  const measured = measuredSize(piece);
  if (measured === null) return null;
  const { kind, kindId, costMinor, on, place, note } = piece;
  return { kind, kindId, ...measured, costMinor, on, place, note };
}

function measuredSize({ kind, size, count }: PieceDraft) {
  const times = (one: Length) => lengthFromUnits(one * (count ?? 1));
  switch (measureOfKind(kind)) {
    case 'length':
    case 'piece':
      return size === null ? null : { size, unitLength: null };
    case 'pack':
      return size === null
        ? null
        : { size: { ...size, length: times(size.length) }, unitLength: size.length };
    case 'count':
      return count === null
        ? null
        : { size: { width: ONE_THING, length: times(ONE_THING) }, unitLength: ONE_THING };
  }
}

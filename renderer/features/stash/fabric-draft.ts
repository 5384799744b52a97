import { z } from 'zod';
import { calendarDate } from '#core/domain/dates';
import { lengthField } from '#core/domain/fields';
import {
  clothKind,
  type ClothKind,
  clothLength,
  type Fabric,
  type FabricDetails,
  printDirection,
} from '#core/domain/stash';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Length, lengthFromInches } from '#core/units/length';
import type { ClothSize } from '#core/units/parse-cloth-size';

const width = lengthField({ title: 'Width' });

const fabricDraft = z.object({
  name: z.string(),
  print: z.string(),
  colorWords: z.string(),
  fiber: z.string(),
  direction: printDirection,
  width,
  isWashed: z.boolean(),
  supplier: z.string(),
  place: z.string(),
  swatch: z.string(),
  notes: z.string(),
});

/** A piece of cloth as it is bought; without a size nothing is booked. */
const pieceDraft = z.object({
  kind: clothKind,
  size: z.object({ width, length: clothLength }).nullable(),
  costMinor: z.int().nullable(),
  on: calendarDate.nullable(),
  note: z.string(),
});
export type PieceDraft = z.infer<typeof pieceDraft>;

const newFabricDraft = z.object({ fabric: fabricDraft, piece: pieceDraft });
export type NewFabricDraft = z.infer<typeof newFabricDraft>;

export function isNewFabricDraft(stored: unknown): stored is NewFabricDraft {
  return newFabricDraft.safeParse(stored).success;
}

/** Unbleached: the color of a fabric of which nothing has been said. */
export const NO_COLOR = '#d8c9a8';

/** A fabric of the workshop's usual width, bought today. */
export function emptyDraft(usualWidth: Length, on: CalendarDate): NewFabricDraft {
  const fabric: FabricDetails = {
    ...{ name: '', print: '', colorWords: '', fiber: 'cotton', direction: 'any', width: usualWidth },
    ...{ isWashed: false, supplier: '', place: '', swatch: NO_COLOR, notes: '' },
  };
  return { fabric, piece: emptyPiece(on) };
}

export function emptyPiece(on: CalendarDate): PieceDraft {
  return { kind: 'yardage', size: null, costMinor: null, on, note: '' };
}

/** The words of a fabric that exists, to be changed. */
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

/** The fabric with a change to it; cloth measured off its old width is as wide as the new one. */
export function withFabric(draft: NewFabricDraft, fabric: FabricDetails): NewFabricDraft {
  const { size } = draft.piece;
  const isFullWidth = size !== null && size.width === draft.fabric.width;
  return {
    fabric,
    piece: isFullWidth ? { ...draft.piece, size: { ...size, width: fabric.width } } : draft.piece,
  };
}

const FAT_WIDTH = lengthFromInches(22);

/** The kind a size speaks for, where none but the usual has been chosen: `FQ` was typed, so it is a fat quarter. */
export function kindOfSize(chosen: ClothKind, size: ClothSize): ClothKind {
  if (chosen !== 'yardage' || size.width !== FAT_WIDTH) return chosen;
  if (size.length === lengthFromInches(18)) return 'fat-quarter';
  return size.length === lengthFromInches(9) ? 'fat-eighth' : chosen;
}

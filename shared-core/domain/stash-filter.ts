import { z } from 'zod';
import { calendarDateSchema } from './dates';
import { placeIdSchema, type StashSearchId } from './ids';
import { pieceKindSchema, pieceLengthSchema, pieceWidthSchema, printDirectionSchema } from './stash';

/** Rectangles of one size, all of one fabric: `width` runs across the fabric, `length` along it. */
export const wantedPatchSchema = z
  .object({ width: pieceWidthSchema, length: pieceLengthSchema, count: z.int().min(1).max(100_000) })
  .readonly();
export type WantedPatch = z.infer<typeof wantedPatchSchema>;

const minor = z.int().min(0).max(100_000_000);

/** What a length of a fabric costs across its width: bought again, or as what is there was paid. Either end may be open. */
export const wantedPriceSchema = z
  .object({
    counted: z.enum(['again', 'paid']),
    length: pieceLengthSchema,
    atLeast: minor.optional(),
    atMost: minor.optional(),
  })
  .readonly();
export type WantedPrice = z.infer<typeof wantedPriceSchema>;

/** What a fabric must have to be listed; what is absent does not matter. */
export const stashFilterSchema = z
  .object({
    kind: pieceKindSchema.optional(),
    direction: printDirectionSchema.optional(),
    /** In this place or in one inside it, whole or with a piece. */
    placeId: placeIdSchema.optional(),
    /** A word among those of its color. */
    color: z.string().trim().min(1).max(40).optional(),
    /** A piece with so much free along the selvage. */
    freeAtLeast: pieceLengthSchema.optional(),
    /** So much free in all its pieces, as a length of its widest one. */
    freeInAll: pieceLengthSchema.optional(),
    /** Some of it bought on this day or later; what was never bought counts from the day it was written down. */
    boughtFrom: calendarDateSchema.optional(),
    /** Some of it bought on this day or earlier. */
    boughtUntil: calendarDateSchema.optional(),
    price: wantedPriceSchema.optional(),
    /** One piece from which all of these can be cut in strips across it, none turned. */
    fits: z.array(wantedPatchSchema).min(1).max(20).readonly().optional(),
  })
  .readonly();
export type StashFilter = z.infer<typeof stashFilterSchema>;

/** A filter as an address keeps it, as JSON; what cannot be read there does not count. */
export function filterOfText(text: string | null): StashFilter {
  if (text === null) return {};
  try {
    const read = stashFilterSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : {};
  } catch {
    return {};
  }
}

export const stashOrderSchema = z.enum(['name', 'newest', 'oldest', 'most-free']);
export type StashOrder = z.infer<typeof stashOrderSchema>;

/** By what the stash is laid out in groups; a fabric of two colors, or in two places, stands in both groups. */
export const stashGroupingSchema = z.enum(['place', 'kind', 'color', 'supplier']);
export type StashGrouping = z.infer<typeof stashGroupingSchema>;

/** One group: the id of its place, its kind, its color word or its supplier; an empty key is the group of those that have none. */
export const stashGroupSchema = z.object({ by: stashGroupingSchema, key: z.string().max(120) }).readonly();
export type StashGroup = z.infer<typeof stashGroupSchema>;

/** All that the stash page is asked to show. */
export const stashSearchSchema = z
  .object({
    search: z.string().max(200),
    filter: stashFilterSchema,
    order: stashOrderSchema,
    grouping: stashGroupingSchema.nullable(),
    view: z.enum(['list', 'shelf']),
  })
  .readonly();
export type StashSearch = z.infer<typeof stashSearchSchema>;

export const searchNameSchema = z.string().trim().min(1).max(60);

export interface SavedSearch {
  readonly id: StashSearchId;
  readonly name: string;
  readonly asked: StashSearch;
}

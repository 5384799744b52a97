import { z } from 'zod';
import { calendarDateSchema } from './dates';
import { placeIdSchema, type StashSearchId } from './ids';
import { pieceKindSchema, pieceLengthSchema, pieceWidthSchema, printDirectionSchema } from './stash';

/** Rectangles of one size, all of one fabric: `width` runs across the fabric, `length` along it. */
const wantedPatchSchema = z
  .object({ width: pieceWidthSchema, length: pieceLengthSchema, count: z.int().min(1).max(100_000) })
  .readonly();
export type WantedPatch = z.infer<typeof wantedPatchSchema>;

const minor = z.int().min(0).max(100_000_000);

/** What a length of a fabric costs, by the price to buy it again or by what was paid. Either end can be open. */
const wantedPriceSchema = z
  .object({
    counted: z.enum(['again', 'paid']),
    length: pieceLengthSchema,
    atLeast: minor.optional(),
    atMost: minor.optional(),
  })
  .readonly();
export type WantedPrice = z.infer<typeof wantedPriceSchema>;

/** What a fabric must have to be listed; an absent property does not matter. */
export const stashFilterSchema = z
  .object({
    kind: pieceKindSchema.optional(),
    direction: printDirectionSchema.optional(),
    /** The fabric or one of its pieces is stored in this place or in one inside it. */
    placeId: placeIdSchema.optional(),
    /** One of its color words. */
    color: z.string().trim().min(1).max(40).optional(),
    /** It has a piece with this length free along the selvage. */
    freeAtLeast: pieceLengthSchema.optional(),
    /** Its pieces together have this length free, at the width of the widest one. */
    freeInAll: pieceLengthSchema.optional(),
    /** Some of it was bought on this day or later; fabric without a purchase counts from the day it was entered, one bought in a month or year on any day of it. */
    boughtFrom: calendarDateSchema.optional(),
    /** Some of it was bought on this day or earlier. */
    boughtUntil: calendarDateSchema.optional(),
    price: wantedPriceSchema.optional(),
    /** All of these can be cut from one piece in strips across it, none turned. */
    fits: z.array(wantedPatchSchema).min(1).max(20).readonly().optional(),
  })
  .readonly();
export type StashFilter = z.infer<typeof stashFilterSchema>;

/** Reads a filter from the JSON in an address; an unreadable one is an empty filter. */
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

/** How the stash is grouped; a fabric with two colors, or in two places, is in both groups. */
export const stashGroupingSchema = z.enum(['place', 'kind', 'color', 'supplier']);
export type StashGrouping = z.infer<typeof stashGroupingSchema>;

/** One group: the id of its place, its kind, its color word or its shop; an empty key is the group of fabrics that have none. */
export const stashGroupSchema = z.object({ by: stashGroupingSchema, key: z.string().max(120) }).readonly();
export type StashGroup = z.infer<typeof stashGroupSchema>;

/** What the stash page shows. */
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

import { z } from 'zod';
import { placeId } from './ids';
import { clothKind, clothLength, clothWidth, printDirection } from './stash';

/** Rectangles of one size, all of one fabric: `width` runs across the cloth, `length` along it. */
export const wantedPatch = z
  .object({ width: clothWidth, length: clothLength, count: z.int().min(1).max(100_000) })
  .readonly();
export type WantedPatch = z.infer<typeof wantedPatch>;

/** What a fabric must have to be listed; what is absent does not matter. */
export const stashFilter = z
  .object({
    kind: clothKind.optional(),
    direction: printDirection.optional(),
    /** In this place or in one inside it, whole or with a piece. */
    placeId: placeId.optional(),
    /** A word among those of its color. */
    color: z.string().trim().min(1).max(40).optional(),
    /** A piece with so much free along the selvage. */
    freeAtLeast: clothLength.optional(),
    /** One piece from which all of these can be cut in strips across it, none turned. */
    fits: z.array(wantedPatch).min(1).max(20).readonly().optional(),
  })
  .readonly();
export type StashFilter = z.infer<typeof stashFilter>;

export const stashOrder = z.enum(['name', 'newest', 'oldest', 'most-free']);
export type StashOrder = z.infer<typeof stashOrder>;

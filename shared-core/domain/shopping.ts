import { z } from 'zod';
import { projectIdSchema, type ShoppingLineId } from './ids';

/** A line of the shopping list in the maker's own words. `howMuch` is what they would ask for in the shop: `2 spools`, `half a yard`. */
export const ownShoppingLineSchema = z
  .object({
    words: z.string().trim().min(1).max(120),
    howMuch: z.string().trim().max(60),
    supplier: z.string().trim().max(120),
    projectId: projectIdSchema.nullable(),
  })
  .readonly();
export type OwnShoppingLine = z.infer<typeof ownShoppingLineSchema>;

export interface SavedShoppingLine extends OwnShoppingLine {
  readonly id: ShoppingLineId;
  readonly projectName: string | null;
}

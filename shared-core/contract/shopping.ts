import { z } from 'zod';
import { calendarDateSchema } from '#core/domain/dates';
import {
  fabricPieceIdSchema,
  fabricIdSchema,
  projectIdSchema,
  shoppingLineIdSchema,
  stashKindIdSchema,
} from '#core/domain/ids';
import type { FabricPieceId, FabricId, ShoppingLineId } from '#core/domain/ids';
import { placePathSchema } from '#core/domain/place';
import { type SavedShoppingLine, ownShoppingLineSchema } from '#core/domain/shopping';
import {
  pieceKindSchema,
  pieceLengthSchema,
  pieceWidthSchema,
  fabricDetailsSchema,
} from '#core/domain/stash';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import type { ShoppingLine } from '#core/stash/shopping/shopping-list';
import type { Length } from '#core/units/length';
import { reads, writes } from './channel';
import { paid } from './stash';
import type { Changed } from './projects';

/** What to buy for the open projects, worked out each time it is read, and the maker's own lines. */
export interface ShoppingList {
  readonly lines: readonly ShoppingLine[];
  readonly own: readonly SavedShoppingLine[];
  /** Needs that the maker left out. */
  readonly leftOut: readonly FabricNeed[];
}

/** How a fabric of the stash would serve a need. */
export interface FabricFit {
  readonly fabric: Fabric;
  /** The pieces that may serve. */
  readonly pieces: readonly FabricPiece[];
  readonly verdict: 'one-piece' | 'several-pieces' | 'short';
  /** How much would be cut from which piece, and how much `more` of that is not set aside for the project yet; lengths in 1/320 mm. */
  readonly takes: readonly {
    readonly pieceId: FabricPieceId;
    readonly length: number;
    readonly more: number;
  }[];
  /** Area that stays free on the pieces it is cut from, in (1/320 mm)². */
  readonly leftOver: number;
  /** How much more of it would be needed; null if it is too narrow. */
  readonly shortBy: Length | null;
  readonly isHeld: boolean;
  readonly isChosen: boolean;
}

export interface FitsOfNeed {
  readonly need: FabricNeed;
  /** The best first. */
  readonly fits: readonly FabricFit[];
}

const need = {
  projectId: projectIdSchema,
  source: z.string().min(1).max(160),
  name: z.string().min(1).max(120),
};

export const shoppingChannels = {
  'shopping:list': reads<ShoppingList>()(z.object({})),
  /** The fabric that a need is met from, or that it is left out; null lets Ringbound choose. */
  'shopping:choose': writes<Changed>()(
    z.object({
      ...need,
      choice: z
        .discriminatedUnion('kind', [
          z.object({ kind: z.literal('fabric'), fabricId: fabricIdSchema }),
          z.object({ kind: z.literal('new-fabric') }),
          z.object({ kind: z.literal('leave-out') }),
        ])
        .nullable(),
    }),
  ),
  /** The fabrics that would serve a need: first those that are large enough, the least left over first, then those that are short. */
  'shopping:fits': reads<FitsOfNeed>()(z.object({ ...need, search: z.string().max(200) })),
  /** Chooses a fabric for a need and sets aside what will be cut, in one change. */
  'shopping:set-aside': writes<Changed>()(
    z.object({
      ...need,
      fabricId: fabricIdSchema,
      takes: z
        .array(z.object({ pieceId: fabricPieceIdSchema, length: pieceLengthSchema }).readonly())
        .max(50)
        .readonly(),
      on: calendarDateSchema,
    }),
  ),
  'shopping:save-line': writes<Changed & { readonly lineId: ShoppingLineId }>()(
    z.object({ lineId: shoppingLineIdSchema.nullable(), details: ownShoppingLineSchema }),
  ),
  'shopping:delete-line': writes<Changed>()(z.object({ lineId: shoppingLineIdSchema })),
  /**
   * Checks a line off, in one change: books the purchase as a piece of a fabric, new or in the stash; sets parts of it aside; chooses the
   * fabric for the needs named; lets the cutting plan that asked for such a piece cut it; and deletes the maker's own line.
   */
  'shopping:buy': writes<Changed & { readonly fabricId: FabricId; readonly pieceId: FabricPieceId }>()(
    z.object({
      lineId: shoppingLineIdSchema.nullable(),
      needs: z.array(z.object(need).readonly()).max(200).readonly(),
      fabric: z.union([z.object({ fabricId: fabricIdSchema }), z.object({ details: fabricDetailsSchema })]),
      kind: pieceKindSchema,
      kindId: stashKindIdSchema.nullable(),
      size: z.object({ width: pieceWidthSchema, length: pieceLengthSchema }),
      unitLength: pieceLengthSchema.nullable(),
      place: placePathSchema,
      ...paid,
      note: z.string().trim().max(500),
      holds: z
        .array(z.object({ projectId: projectIdSchema, length: pieceLengthSchema }).readonly())
        .max(200)
        .readonly(),
    }),
  ),
};

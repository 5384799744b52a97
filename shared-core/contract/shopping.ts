import { z } from 'zod';
import { calendarDate } from '#core/domain/dates';
import { fabricPieceId, fabricId, projectId, shoppingLineId, stashKindId } from '#core/domain/ids';
import type { FabricPieceId, FabricId, ShoppingLineId } from '#core/domain/ids';
import { placePath } from '#core/domain/place';
import { type KeptShoppingLine, ownShoppingLine } from '#core/domain/shopping';
import { pieceKindSchema, pieceLengthSchema, pieceWidthSchema, fabricDetails } from '#core/domain/stash';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import type { ShoppingLine } from '#core/stash/shopping/shopping-list';
import type { Length } from '#core/units/length';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** What has to be bought for the open projects, worked out anew each time it is asked for, and what the maker wrote herself. */
export interface ShoppingList {
  readonly lines: readonly ShoppingLine[];
  readonly own: readonly KeptShoppingLine[];
  /** Needs the maker said no to. */
  readonly leftOut: readonly FabricNeed[];
}

/** How a fabric of the stash would serve a need. */
export interface FabricFit {
  readonly fabric: Fabric;
  /** Those that may serve. */
  readonly pieces: readonly FabricPiece[];
  readonly verdict: 'one-piece' | 'several-pieces' | 'short';
  /** What would be cut of which piece, and what of that is not set aside for the project yet; lengths in 1/320 mm. */
  readonly takes: readonly {
    readonly pieceId: FabricPieceId;
    readonly length: number;
    readonly more: number;
  }[];
  /** What stays free of the pieces it is cut from, (1/320 mm)². */
  readonly leftOver: number;
  /** How much more of it would be needed; null where it is too narrow. */
  readonly shortBy: Length | null;
  readonly isHeld: boolean;
  readonly isChosen: boolean;
}

export interface FitsOfNeed {
  readonly need: FabricNeed;
  /** The best first. */
  readonly fits: readonly FabricFit[];
}

const need = { projectId, source: z.string().min(1).max(160), name: z.string().min(1).max(120) };

export const shoppingChannels = {
  'shopping:list': reads<ShoppingList>()(z.object({})),
  /** Which fabric of the stash a need is met from, or that it is left out; null: as the notebook takes it. */
  'shopping:choose': writes<Changed>()(
    z.object({
      ...need,
      choice: z
        .discriminatedUnion('kind', [
          z.object({ kind: z.literal('fabric'), fabricId }),
          z.object({ kind: z.literal('new-fabric') }),
          z.object({ kind: z.literal('leave-out') }),
        ])
        .nullable(),
    }),
  ),
  /** The fabrics that would serve a need: those big enough that leave least over first, then those that are short. */
  'shopping:fits': reads<FitsOfNeed>()(z.object({ ...need, search: z.string().max(200) })),
  /** Takes a fabric for a need and sets aside what is to be cut, in one change. */
  'shopping:set-aside': writes<Changed>()(
    z.object({
      ...need,
      fabricId,
      takes: z
        .array(z.object({ pieceId: fabricPieceId, length: pieceLengthSchema }).readonly())
        .max(50)
        .readonly(),
      on: calendarDate,
    }),
  ),
  'shopping:keep': writes<Changed & { readonly lineId: ShoppingLineId }>()(
    z.object({ lineId: shoppingLineId.nullable(), details: ownShoppingLine }),
  ),
  'shopping:remove': writes<Changed>()(z.object({ lineId: shoppingLineId })),
  /**
   * Ticks a line off: books what was bought as a piece of a fabric, one of the stash or a new one, sets parts of it aside, takes the
   * fabric for the needs named, lets the cutting plan that asked for just this piece cut it, and takes the maker's own line off the
   * list, all in one change.
   */
  'shopping:buy': writes<Changed & { readonly fabricId: FabricId; readonly pieceId: FabricPieceId }>()(
    z.object({
      lineId: shoppingLineId.nullable(),
      needs: z.array(z.object(need).readonly()).max(200).readonly(),
      fabric: z.union([z.object({ fabricId }), z.object({ details: fabricDetails })]),
      kind: pieceKindSchema,
      kindId: stashKindId.nullable(),
      size: z.object({ width: pieceWidthSchema, length: pieceLengthSchema }),
      unitLength: pieceLengthSchema.nullable(),
      place: placePath,
      costMinor: z.int().min(0).max(100_000_000),
      on: calendarDate,
      note: z.string().trim().max(500),
      holds: z
        .array(z.object({ projectId, length: pieceLengthSchema }).readonly())
        .max(200)
        .readonly(),
    }),
  ),
};

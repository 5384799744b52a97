import { z } from 'zod';
import { fabricPieceIdSchema, placeIdSchema, stashKindIdSchema } from '#core/domain/ids';
import type { PlaceId, StashKindId } from '#core/domain/ids';
import { type Place, placeNameSchema, placePathSchema } from '#core/domain/place';
import { type StashKind, stashKindDetailsSchema } from '#core/domain/stash-kind';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export interface PlaceGlance extends Place {
  /** Number of fabrics stored here, whole or with one of their pieces; not those in the places inside it. */
  readonly fabrics: number;
}

export const placeChannels = {
  /** By path, so that every place follows the one around it. */
  'place:list': reads<readonly PlaceGlance[]>()(z.object({})),
  /** Adds the place with this path, and the places around it that are new. */
  'place:add': writes<Changed & { readonly placeId: PlaceId }>()(
    z.object({ path: placePathSchema.refine((path) => path !== '') }),
  ),
  'place:rename': writes<Changed>()(z.object({ placeId: placeIdSchema, name: placeNameSchema })),
  /** Moves a place with everything in it into another; null makes it a room. */
  'place:move': writes<Changed>()(z.object({ placeId: placeIdSchema, parentId: placeIdSchema.nullable() })),
  /** What was stored in it, or in a place inside it, moves to the place around it. */
  'place:delete': writes<Changed>()(z.object({ placeId: placeIdSchema })),
  /** An empty path stores the piece with the rest of its fabric. */
  'piece:store-in': writes<Changed>()(z.object({ pieceId: fabricPieceIdSchema, path: placePathSchema })),

  /** In the maker's order. */
  'kind:list': reads<readonly StashKind[]>()(z.object({})),
  'kind:save': writes<Changed & { readonly kindId: StashKindId }>()(
    z.object({ kindId: stashKindIdSchema.nullable(), details: stashKindDetailsSchema }),
  ),
  /** Pieces of a deleted kind are shown by its form. */
  'kind:delete': writes<Changed>()(z.object({ kindId: stashKindIdSchema })),
};

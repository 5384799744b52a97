import { z } from 'zod';
import { fabricPieceId, placeId, stashKindId } from '#core/domain/ids';
import type { PlaceId, StashKindId } from '#core/domain/ids';
import { type Place, placeName, placePath } from '#core/domain/place';
import { type StashKind, stashKindDetails } from '#core/domain/stash-kind';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export interface PlaceGlance extends Place {
  /** Fabrics that lie here itself, whole or with a piece of their own; not what lies in the places inside it. */
  readonly fabrics: number;
}

export const placeChannels = {
  /** By path, so that every place follows the one it is in. */
  'place:list': reads<readonly PlaceGlance[]>()(z.object({})),
  /** Makes the place with this path, and those it is in, where they are not there yet. */
  'place:add': writes<Changed & { readonly placeId: PlaceId }>()(
    z.object({ path: placePath.refine((path) => path !== '') }),
  ),
  'place:rename': writes<Changed>()(z.object({ placeId, name: placeName })),
  /** Puts a place with all that is in it into another; null makes a room of it. */
  'place:move': writes<Changed>()(z.object({ placeId, parentId: placeId.nullable() })),
  /** What lay in it, or in a place inside it, then lies in the place it was in. */
  'place:delete': writes<Changed>()(z.object({ placeId })),
  /** An empty path lays the piece with the rest of its fabric. */
  'piece:lie': writes<Changed>()(z.object({ pieceId: fabricPieceId, path: placePath })),

  /** In the maker's order. */
  'kind:list': reads<readonly StashKind[]>()(z.object({})),
  'kind:keep': writes<Changed & { readonly kindId: StashKindId }>()(
    z.object({ kindId: stashKindId.nullable(), details: stashKindDetails }),
  ),
  /** Pieces of a kind that is gone are told by its form. */
  'kind:delete': writes<Changed>()(z.object({ kindId: stashKindId })),
};

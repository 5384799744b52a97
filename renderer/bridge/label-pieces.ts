import type { PieceWithCode } from '#core/contract/stash';
import type { FabricPieceId, FabricId, PlaceId } from '#core/domain/ids';
import { isInPlace } from '#core/domain/place';
import type { StashFilter } from '#core/domain/stash-filter';
import { useRead, useReadEach } from './query';

/** The pieces to make labels for. A place includes all places inside it. */
export type LabelsOf =
  | { readonly of: 'fabric'; readonly fabricId: FabricId; readonly pieceId?: FabricPieceId }
  | { readonly of: 'place'; readonly placeId: PlaceId }
  | { readonly of: 'found'; readonly search: string; readonly filter: StashFilter };

/** The most labels made at once, and the most fabrics they are made for. */
export const LABELS_AT_ONCE = 500;

export interface LabelPieces {
  /** Fabric by fabric; pieces that are used up are left out. */
  readonly pieces: readonly PieceWithCode[];
  /** There are more pieces than fit at once. */
  readonly isMore: boolean;
}

/** The pieces to make labels for; undefined until they are read. */
export function useLabelPieces(of: LabelsOf): LabelPieces | undefined {
  const opened = useReadEach('fabric:open', of.of === 'fabric' ? [{ fabricId: of.fabricId }] : []);
  const listed = useReadEach('fabric:list', of.of === 'fabric' ? [] : [searchOf(of)]);
  const places = useRead('place:list', {}, { isOn: of.of === 'place' }).value;
  if (opened === undefined || listed === undefined) return undefined;
  if (of.of === 'place' && places === undefined) return undefined;
  const path = of.of === 'place' ? places?.find(({ id }) => id === of.placeId)?.path : undefined;
  const [list] = listed;
  const glances = [...opened.flatMap((one) => one ?? []), ...(list?.items ?? [])];
  const pieces = glances.flatMap(({ fabric, pieces: all }) =>
    all
      .filter(({ id, there }) => there > 0 && (!('pieceId' in of) || of.pieceId === id))
      .filter(({ place }) => path === undefined || isInPlace(place === '' ? fabric.place : place, path))
      .map((piece) => ({ piece, fabric })),
  );
  const isMore = pieces.length > LABELS_AT_ONCE || (list?.total ?? 0) > LABELS_AT_ONCE;
  return { pieces: pieces.slice(0, LABELS_AT_ONCE), isMore };
}

function searchOf(of: Exclude<LabelsOf, { readonly of: 'fabric' }>) {
  const search =
    of.of === 'place'
      ? { search: '', filter: { placeId: of.placeId } }
      : { search: of.search, filter: of.filter };
  return { ...search, limit: LABELS_AT_ONCE };
}

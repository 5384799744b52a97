import type { PieceWithCode } from '#core/contract/stash';
import type { FabricPieceId, FabricId, PlaceId } from '#core/domain/ids';
import { isInPlace } from '#core/domain/place';
import type { StashFilter } from '#core/domain/stash-filter';
import { useRead, useReadEach } from './query';

/** Of which pieces labels are asked for. A place is meant with all the places inside it. */
export type LabelsOf =
  | { readonly of: 'fabric'; readonly fabricId: FabricId; readonly pieceId?: FabricPieceId }
  | { readonly of: 'place'; readonly placeId: PlaceId }
  | { readonly of: 'found'; readonly search: string; readonly filter: StashFilter };

/** So many labels are made at once, of so many fabrics at most. */
export const LABELS_AT_ONCE = 500;

export interface LabelPieces {
  /** Fabric by fabric; what is used up needs no label. */
  readonly pieces: readonly PieceWithCode[];
  /** There are others, which are left out. */
  readonly isMore: boolean;
}

/** The pieces that labels are asked for; undefined until they are read. */
export function useLabelPieces(of: LabelsOf): LabelPieces | undefined {
  const opened = useReadEach('fabric:open', of.of === 'fabric' ? [{ fabricId: of.fabricId }] : []);
  const listed = useReadEach('fabric:list', of.of === 'fabric' ? [] : [askedOf(of)]);
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

function askedOf(of: Exclude<LabelsOf, { readonly of: 'fabric' }>) {
  const asked =
    of.of === 'place'
      ? { search: '', filter: { placeId: of.placeId } }
      : { search: of.search, filter: of.filter };
  return { ...asked, limit: LABELS_AT_ONCE };
}

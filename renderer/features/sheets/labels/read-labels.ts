import { z } from 'zod';
import { fabricIdSchema, fabricPieceIdSchema, placeIdSchema } from '#core/domain/ids';
import { filterOfText } from '#core/domain/stash-filter';
import type { LabelsOf } from '#renderer/bridge/label-pieces';
import type { SheetAddress } from '../sheet';

/** Whose labels an address asks for, on which label of the sheet they start, and whether the labels are outlined. */
export function readLabels(address: SheetAddress) {
  const of = readLabelsOf(address);
  const startAt = z.coerce.number().int().min(1).catch(1).parse(address.search.get('start'));
  return of === null ? null : { of, startAt, hasLines: address.search.has('lines') };
}

function readLabelsOf({ path, search }: SheetAddress): LabelsOf | null {
  const [of, id, ...more] = path;
  if (more.length > 0) return null;
  if (of === 'found' && id === undefined) {
    return { of, search: search.get('search') ?? '', filter: filterOfText(search.get('filter')) };
  }
  const [fabric, place] = [fabricIdSchema.safeParse(id), placeIdSchema.safeParse(id)];
  const piece = fabricPieceIdSchema.safeParse(search.get('piece'));
  if (of === 'fabric' && fabric.success) {
    return { of, fabricId: fabric.data, ...(piece.success ? { pieceId: piece.data } : {}) };
  }
  return of === 'place' && place.success ? { of, placeId: place.data } : null;
}

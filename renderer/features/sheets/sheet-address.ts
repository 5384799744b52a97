import { z } from 'zod';
import { fabricPieceId, fabricId, placeId, projectId, type ProjectId } from '#core/domain/ids';
import type { SheetPaper } from '#core/domain/paper';
import { filterOfText } from '#core/domain/stash-filter';
import type { LabelsOf } from '#renderer/bridge/label-pieces';

/** Which sheet an address asks for, on which paper. */
export type SheetRequest =
  | { readonly sheet: 'project' | 'cutting'; readonly projectId: ProjectId; readonly paper: SheetPaper }
  | { readonly sheet: 'shopping'; readonly paper: SheetPaper }
  | {
      readonly sheet: 'labels';
      readonly of: LabelsOf;
      readonly paper: SheetPaper;
      readonly startAt: number;
      readonly hasLines: boolean;
    }
  | {
      readonly sheet: 'center-template';
      readonly projectId: ProjectId;
      readonly paper: SheetPaper;
      readonly part: 'whole' | 'quarter';
    };

/** Reads what follows `/sheets/` and the search; null for an address that names no sheet. Without a paper it is A4. */
export function readSheetAddress(rest: string, search: URLSearchParams): SheetRequest | null {
  const [sheet, id, ...more] = rest.split('/');
  const paper = search.get('paper') === 'letter' ? 'letter' : 'a4';
  if (sheet === 'shopping' && id === undefined) return { sheet, paper };
  if (sheet === 'labels') {
    const of = readLabelsOf(id, more, search);
    const startAt = z.coerce.number().int().min(1).catch(1).parse(search.get('start'));
    return of === null ? null : { sheet, of, paper, startAt, hasLines: search.has('lines') };
  }
  const project = projectId.safeParse(id);
  if (!project.success || more.length > 0) return null;
  if (sheet === 'project' || sheet === 'cutting') return { sheet, projectId: project.data, paper };
  if (sheet === 'center-template') {
    const part = search.get('part') === 'quarter' ? 'quarter' : 'whole';
    return { sheet, projectId: project.data, paper, part };
  }
  return null;
}

function readLabelsOf(
  of: string | undefined,
  [id, ...more]: readonly string[],
  search: URLSearchParams,
): LabelsOf | null {
  if (more.length > 0) return null;
  if (of === 'found' && id === undefined) {
    return { of, search: search.get('search') ?? '', filter: filterOfText(search.get('filter')) };
  }
  const [fabric, place] = [fabricId.safeParse(id), placeId.safeParse(id)];
  const piece = fabricPieceId.safeParse(search.get('piece'));
  if (of === 'fabric' && fabric.success)
    return { of, fabricId: fabric.data, ...(piece.success ? { pieceId: piece.data } : {}) };
  return of === 'place' && place.success ? { of, placeId: place.data } : null;
}

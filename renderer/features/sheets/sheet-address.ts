import type { SheetPaper } from '#core/domain/paper';
import { projectId, type ProjectId } from '#core/domain/ids';

/** Which sheet an address asks for, on which paper. */
export type SheetRequest =
  | { readonly sheet: 'project' | 'cutting'; readonly projectId: ProjectId; readonly paper: SheetPaper }
  | { readonly sheet: 'shopping'; readonly paper: SheetPaper }
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
  const project = projectId.safeParse(id);
  if (!project.success || more.length > 0) return null;
  if (sheet === 'project' || sheet === 'cutting') return { sheet, projectId: project.data, paper };
  if (sheet === 'center-template') {
    const part = search.get('part') === 'quarter' ? 'quarter' : 'whole';
    return { sheet, projectId: project.data, paper, part };
  }
  return null;
}

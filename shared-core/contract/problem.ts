import type { TableRefusal } from '#core/domain/stash-table';
import type { FieldProblem } from '#core/field-problem';

export type { FieldProblem } from '#core/field-problem';

/** Every expected way in which a call may fail, as data; `renderer/text/problems.ts` gives each its words. */
export type Problem =
  | { readonly code: 'invalid-input'; readonly fields: readonly FieldProblem[] }
  | { readonly code: 'not-found'; readonly what: string }
  | { readonly code: 'gate-closed'; readonly open: readonly string[] }
  | {
      readonly code: 'short-of-fabric';
      readonly free: number;
      readonly there: number;
      readonly asked: number;
    }
  | { readonly code: 'already-taken-back' }
  | { readonly code: 'in-use'; readonly what: string }
  | { readonly code: 'name-taken'; readonly name: string }
  | { readonly code: 'still-away'; readonly what: string }
  | { readonly code: 'nothing-to-undo' }
  | { readonly code: 'changed-since'; readonly what: string }
  | { readonly code: 'not-a-photo' }
  | { readonly code: 'table-refused'; readonly refusal: TableRefusal }
  | { readonly code: 'table-has-faults'; readonly count: number }
  | { readonly code: 'file-unreadable'; readonly detail: string }
  | { readonly code: 'backup-unusable'; readonly detail: string }
  | { readonly code: 'newer-workshop'; readonly found: number; readonly known: number }
  | { readonly code: 'unexpected'; readonly detail: string };

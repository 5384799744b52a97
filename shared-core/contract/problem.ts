import type { TableRefusal } from '#core/domain/stash-table';

/** What a call may ask for by its id and not find. */
export type RecordKind =
  | 'project'
  | 'stage'
  | 'stage-plan'
  | 'checklist-item'
  | 'photo'
  | 'pattern-file'
  | 'trip'
  | 'trip-event'
  | 'contact'
  | 'work'
  | 'running-clock'
  | 'calculator'
  | 'saved-answer'
  | 'fabric'
  | 'piece'
  | 'booking'
  | 'place'
  | 'stash-kind'
  | 'stash-search'
  | 'need'
  | 'shopping-line'
  | 'cutting-plan'
  | 'cut'
  | 'backup';

/** What is wrong with one field of an input; limits are in the units of the field. */
export type FieldFault =
  | { readonly code: 'empty' }
  | { readonly code: 'text-too-long'; readonly maximum: number }
  | { readonly code: 'too-small'; readonly minimum: number }
  | { readonly code: 'too-large'; readonly maximum: number }
  | { readonly code: 'too-few'; readonly minimum: number }
  | { readonly code: 'too-many'; readonly maximum: number }
  | { readonly code: 'not-whole' }
  | { readonly code: 'zero-character' }
  | { readonly code: 'unreadable' };

export interface InputProblem {
  readonly path: readonly (string | number)[];
  readonly fault: FieldFault;
}

/**
 * Why a booking cannot be undone. leftover-used: a leftover of the cut is no longer whole and free. fabric-used-since: less is there than was
 * booked. fabric-set-aside: what would go is set aside. hold-gone: what was set aside is no longer held. value-moved: the value is no longer
 * with the piece. project-deleted: the project it was set aside for is deleted.
 */
export type UndoRefusal =
  | { readonly code: 'leftover-used' }
  | { readonly code: 'fabric-used-since' }
  | { readonly code: 'fabric-set-aside' }
  | { readonly code: 'hold-gone' }
  | { readonly code: 'value-moved' }
  | { readonly code: 'project-deleted' };

/** Every expected way in which a call may fail, as data; `renderer/text/problems.ts` gives each its words. Lengths are in 1/320 mm. */
export type Problem =
  | UndoRefusal
  | { readonly code: 'invalid-input'; readonly fields: readonly InputProblem[] }
  | { readonly code: 'not-found'; readonly kind: RecordKind }
  | { readonly code: 'name-taken'; readonly name: string }
  /** A record stays because others depend on it. */
  | { readonly code: 'in-use'; readonly kind: 'fabric' | 'contact'; readonly name: string }
  /** A stage plan that came with the notebook. */
  | { readonly code: 'built-in'; readonly name: string }
  | { readonly code: 'gate-closed'; readonly open: readonly string[] }
  /** A saved answer has another hole or seam than the project, and the hole is about to be cut. */
  | { readonly code: 'cut-unsettled' }
  | { readonly code: 'still-away'; readonly stage: string }
  /** A second trip of a project that is booked or away already. */
  | { readonly code: 'trip-open'; readonly withWhom: string; readonly isAway: boolean }
  | { readonly code: 'promised-before-sent' }
  /** The project has changed so that its calculator gives no answer. */
  | { readonly code: 'no-answer'; readonly calculator: string }
  | {
      readonly code: 'short-of-fabric';
      readonly free: number;
      readonly there: number;
      readonly asked: number;
    }
  | { readonly code: 'more-than-set-aside'; readonly held: number }
  /** A length of fabric counted in items that is no whole number of items. */
  | { readonly code: 'uneven-count'; readonly unitLength: number }
  | {
      readonly code: 'leftover-too-large';
      readonly width: number;
      readonly length: number;
      readonly cutWidth: number;
      readonly cutLength: number;
    }
  /** Each leftover fits, but together they have more area than the cut. */
  | { readonly code: 'leftovers-too-large'; readonly cutWidth: number; readonly cutLength: number }
  | { readonly code: 'place-inside-itself'; readonly place: string; readonly into: string }
  | { readonly code: 'plan-changed' }
  | { readonly code: 'already-undone' }
  | { readonly code: 'nothing-to-undo' }
  | { readonly code: 'nothing-to-redo' }
  /** A named change is no longer the newest; `says` is what it did. */
  | { readonly code: 'not-newest-change'; readonly says: string }
  | { readonly code: 'not-a-photo' }
  | { readonly code: 'not-a-pattern-file' }
  | { readonly code: 'table-refused'; readonly refusal: TableRefusal }
  | { readonly code: 'table-has-faults'; readonly count: number }
  | { readonly code: 'file-unreadable'; readonly detail: string }
  | { readonly code: 'backup-unusable'; readonly detail: string }
  | { readonly code: 'newer-workshop'; readonly found: number; readonly newestSupported: number }
  | { readonly code: 'unexpected'; readonly detail: string };

import type { Problem } from '#core/contract/problem';

/** Words for the few things that can keep the notebook from opening; there is no page yet that could say them. */
export function wordsForStart(problem: Problem): string {
  switch (problem.code) {
    case 'newer-workshop':
      return (
        `It was last written by a newer Ringbound (workshop format ${problem.found}; this one knows ${problem.known}). ` +
        'Nothing was changed. Install the newer program, or open another workshop with --workshop FILE.'
      );
    case 'file-unreadable':
    case 'backup-unusable':
    case 'unexpected':
      return `${problem.detail}\n\nNothing was changed. Your backups are in the folder “backups” beside the workshop file.`;
    case 'invalid-input':
    case 'not-found':
    case 'gate-closed':
    case 'short-of-fabric':
    case 'already-taken-back':
    case 'in-use':
    case 'name-taken':
    case 'still-away':
    case 'nothing-to-undo':
    case 'changed-since':
    case 'not-a-photo':
    case 'table-refused':
    case 'table-has-faults':
      return `The workshop could not be read (${problem.code}). Nothing was changed.`;
  }
}

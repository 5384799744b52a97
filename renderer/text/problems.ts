import { assertNever } from '#core/assert-never';
import type { Problem } from '#core/contract/problem';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { andList } from './field-problems';
import { tableRefusalWords } from './table-words';

/** What to say when a call did not do what was asked: what happened, and what to do about it. */
export function problemWords(problem: Problem, display: LengthDisplay): string {
  const length = (units: number) => formatLength(lengthFromUnits(units), display);
  switch (problem.code) {
    case 'invalid-input':
      return problem.fields.length === 0
        ? 'Something in this form could not be read. Look it over and try again.'
        : `Look again at ${andList(problem.fields.map((field) => `${field.path.join(' ')} (expected ${field.expected})`))}.`;
    case 'not-found':
      return `This ${problem.what} is not in the notebook any more. It may have been deleted; Undo brings it back.`;
    case 'gate-closed':
      return `Not yet: ${andList(problem.open.map((line) => `“${line}”`))} ${problem.open.length === 1 ? 'is' : 'are'} still open.`;
    case 'short-of-fabric':
      return `There is not enough of this: ${length(problem.asked)} asked for, ${length(problem.free)} free of ${length(problem.there)} there.`;
    case 'already-taken-back':
      return 'This was taken back before.';
    case 'in-use':
      return `This ${problem.what} is still in use, so it stays.`;
    case 'name-taken':
      return `There is a “${problem.name}” already. Give this one another name.`;
    case 'still-away':
      return `“${problem.what}” is still away. Write down on its page that it is back, then it moves on.`;
    case 'nothing-to-undo':
      return 'There is nothing left to take back.';
    case 'changed-since':
      return `This ${problem.what} has changed meanwhile. Look at it again before you go on.`;
    case 'not-a-photo':
      return 'This file is not a picture the notebook can keep. JPEG, PNG and WebP up to 40 MB work.';
    case 'table-refused':
      return tableRefusalWords(problem.refusal);
    case 'table-has-faults':
      return `Nothing was brought in: ${String(problem.count)} ${problem.count === 1 ? 'cell' : 'cells'} of the table cannot be read yet.`;
    case 'file-unreadable':
      return `The file could not be read or written (${problem.detail}). Check that the disk is there and has room.`;
    case 'backup-unusable':
      return `This backup cannot be used (${problem.detail}). Nothing was changed; try an older one.`;
    case 'newer-workshop':
      return `This workshop was last used with a newer Ringbound (${String(problem.found)}; this one knows ${String(problem.known)}). Nothing was changed: open it with the newer program.`;
    case 'unexpected':
      return `Something went wrong in the notebook itself (${problem.detail}). What you kept before is safe; try again, or close the notebook and open it again.`;
    default:
      return assertNever(problem);
  }
}

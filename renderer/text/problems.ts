import { assertNever } from '#core/assert-never';
import type { Problem, RecordKind } from '#core/contract/problem';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { andList } from './field-problems';
import { inputProblemWords } from './input-problems';
import { tableRefusalWords } from './table-words';

/** What to say when a call failed: what happened, and what to do about it. */
export function problemWords(problem: Problem, display: LengthDisplay): string {
  const length = (units: number) => formatLength(lengthFromUnits(units), display);
  const size = (width: number, long: number) => `${length(width)} × ${length(long)}`;
  switch (problem.code) {
    case 'invalid-input':
      return inputProblemWords(problem.fields, display);
    case 'not-found':
      return `Can’t find ${RECORD_NAMES[problem.kind]}. It may have been deleted; Undo brings it back.`;
    case 'name-taken':
      return `There is already a “${problem.name}”. Choose another name.`;
    case 'in-use':
      return problem.kind === 'fabric'
        ? `“${problem.name}” still has ledger entries, so it can’t be deleted. Undo them first, or leave a used-up fabric where it is.`
        : `“${problem.name}” is on record for a trip, so this contact can’t be deleted.`;
    case 'built-in':
      return `“${problem.name}” came with Ringbound, so it can’t be changed or deleted. Copy it and change the copy.`;
    case 'gate-closed':
      return `Before you start, check off ${andList(problem.open.map((line) => `“${line}”`))}.`;
    case 'cut-unsettled':
      return 'The hole isn’t settled: a saved answer and the project differ. Settle it on the stage’s page first; a cut can’t be undone.';
    case 'still-away':
      return `“${problem.stage}” is still at the quilter. Record on its page that it is back; then you can move on.`;
    case 'trip-open':
      return problem.isAway
        ? `It is still with ${problem.withWhom}. Record that it is back before you send it anywhere else.`
        : `It is reserved with ${problem.withWhom} already. Change or delete that trip instead.`;
    case 'promised-before-sent':
      return 'It is promised back before it is sent. Check both dates.';
    case 'no-answer':
      return `“${problem.calculator}” can’t be worked out from these numbers. Check them and try again.`;
    case 'short-of-fabric':
      return `Not enough fabric: you need ${length(problem.asked)}, but only ${length(problem.free)} is free (${length(problem.there)} in all).`;
    case 'more-than-set-aside':
      return `Only ${length(problem.held)} is set aside. Enter ${length(problem.held)} or less.`;
    case 'uneven-count':
      return `This fabric is counted in items of ${length(problem.unitLength)}. Enter a whole number of them.`;
    case 'leftover-too-large':
      return `A leftover of ${size(problem.width, problem.length)} is bigger than the piece you cut (${size(problem.cutWidth, problem.cutLength)}).`;
    case 'leftovers-too-large':
      return `Together, these leftovers are bigger than the piece you cut (${size(problem.cutWidth, problem.cutLength)}).`;
    case 'leftover-used':
      return 'Can’t undo this cut: one of its leftovers has been used since.';
    case 'fabric-used-since':
      return 'Can’t undo this: some of its fabric has been used since.';
    case 'fabric-set-aside':
      return 'Can’t undo this: its fabric is set aside for a project. Release it first.';
    case 'hold-gone':
      return 'Can’t undo this: the fabric it set aside has been used or released since.';
    case 'value-moved':
      return 'Can’t undo this: part of the fabric it was paid for has been used since.';
    case 'project-deleted':
      return 'Can’t undo this: the project it was set aside for is deleted. Restore the project first with Undo.';
    case 'already-undone':
      return 'This is undone already.';
    case 'place-inside-itself':
      return `“${problem.into}” is inside “${problem.place}”. Choose a place outside it.`;
    case 'plan-changed':
      return 'The cutting plan has changed since this page was shown. Look at it again before you go on.';
    case 'nothing-to-undo':
      return 'There is nothing to undo.';
    case 'nothing-to-redo':
      return 'There is nothing to redo.';
    case 'not-newest-change':
      return `Other changes came after “${problem.says}”. Undo those first; History lists them.`;
    case 'not-a-photo':
      return 'This file isn’t a picture that Ringbound can store. JPEG, PNG and WebP up to 40 MB work.';
    case 'not-a-pattern-file':
      return 'This file can’t be kept with the pattern. PDF, JPEG, PNG and WebP up to 40 MB work.';
    case 'table-refused':
      return tableRefusalWords(problem.refusal);
    case 'table-has-faults':
      return `Nothing was imported: ${String(problem.count)} ${problem.count === 1 ? 'cell' : 'cells'} can’t be read yet.`;
    case 'file-unreadable':
      return `The file can’t be read or written (${problem.detail}). Check that the disk is connected and has room.`;
    case 'backup-unusable':
      return `This backup can’t be used (${problem.detail}). Nothing was changed; try an older one.`;
    case 'newer-workshop':
      return `This workshop was last used with a newer Ringbound (format ${String(problem.found)}; this one reads up to ${String(problem.newestSupported)}). Nothing was changed. Open it with the newer program.`;
    case 'unexpected':
      return `Something went wrong in Ringbound itself (${problem.detail}). What you saved before is safe. Try again, or close Ringbound and open it again.`;
    default:
      return assertNever(problem);
  }
}

const RECORD_NAMES: Readonly<Record<RecordKind, string>> = {
  project: 'this project',
  stage: 'this stage',
  'stage-plan': 'this stage plan',
  'checklist-item': 'this line of the checklist',
  photo: 'this photo',
  'pattern-file': 'the file of this pattern',
  trip: 'this trip',
  'trip-event': 'this update',
  contact: 'this contact',
  work: 'this logged time',
  'running-clock': 'the running clock',
  calculator: 'this calculator',
  'saved-answer': 'these saved numbers',
  fabric: 'this fabric',
  piece: 'this piece of fabric',
  booking: 'this ledger entry',
  place: 'this place',
  'stash-kind': 'this kind',
  'stash-search': 'this search',
  need: 'this item of the project',
  'shopping-line': 'this line of the shopping list',
  'cutting-plan': 'this cutting plan',
  cut: 'this cut',
  backup: 'this backup',
};

import { describe, expect, it } from 'vitest';
import type { FieldFault, Problem, RecordKind } from '#core/contract/problem';
import { lengthFromInches } from '#core/units/length';
import { lengthProblemWords } from '#renderer/text/field-problems';
import { problemWords } from '#renderer/text/problems';

const inch = { system: 'inch', inchStep: 8 } as const;
const metric = { system: 'metric', inchStep: 8 } as const;
const inches = lengthFromInches;

type Sample<Kind> = readonly [sample: Kind, sentence: string];

/** Typed by code, so that a new code does not compile without a sample and its sentence. */
const PROBLEMS: { readonly [Code in Problem['code']]: Sample<Extract<Problem, { readonly code: Code }>> } = {
  'invalid-input': [
    { code: 'invalid-input', fields: [{ path: ['details', 'withWhom'], fault: { code: 'empty' } }] },
    'Fill in who has it.',
  ],
  'not-found': [
    { code: 'not-found', kind: 'fabric' },
    'Can’t find this fabric. It may have been deleted; Undo brings it back.',
  ],
  'name-taken': [
    { code: 'name-taken', name: 'Shelf 2' },
    'There is already a “Shelf 2”. Choose another name.',
  ],
  'in-use': [
    { code: 'in-use', kind: 'fabric', name: 'Rust leaves' },
    '“Rust leaves” still has ledger entries, so it can’t be deleted. Undo them first, or leave a used-up fabric where it is.',
  ],
  'built-in': [
    { code: 'built-in', name: 'Throw' },
    '“Throw” came with Ringbound, so it can’t be changed or deleted. Copy it and change the copy.',
  ],
  'gate-closed': [
    { code: 'gate-closed', open: ['Outside is bound', 'Center is marked'] },
    'Before you start, check off “Outside is bound” and “Center is marked”.',
  ],
  'cut-unsettled': [
    { code: 'cut-unsettled' },
    'The hole isn’t settled: a saved answer and the project differ. Settle it on the stage’s page first; a cut can’t be undone.',
  ],
  'still-away': [
    { code: 'still-away', stage: 'Longarm quilting' },
    '“Longarm quilting” is still at the quilter. Record on its page that it is back; then you can move on.',
  ],
  'trip-open': [
    { code: 'trip-open', withWhom: 'Pell Tallowmere', isAway: true },
    'It is still with Pell Tallowmere. Record that it is back before you send it anywhere else.',
  ],
  'promised-before-sent': [
    { code: 'promised-before-sent' },
    'It is promised back before it is sent. Check both dates.',
  ],
  'no-answer': [
    { code: 'no-answer', calculator: 'Backing' },
    '“Backing” can’t be worked out from these numbers. Check them and try again.',
  ],
  'short-of-fabric': [
    { code: 'short-of-fabric', free: inches(1), there: inches(2), asked: inches(10) },
    'Not enough fabric: you need 10 in, but only 1 in is free (2 in in all).',
  ],
  'more-than-set-aside': [
    { code: 'more-than-set-aside', held: inches(18) },
    'Only 18 in is set aside. Enter 18 in or less.',
  ],
  'uneven-count': [
    { code: 'uneven-count', unitLength: inches(18) },
    'This fabric is counted in items of 18 in. Enter a whole number of them.',
  ],
  'leftover-too-large': [
    {
      code: 'leftover-too-large',
      width: inches(43),
      length: inches(10),
      cutWidth: inches(42),
      cutLength: inches(10),
    },
    'A leftover of 43 in × 10 in is bigger than the piece you cut (42 in × 10 in).',
  ],
  'leftovers-too-large': [
    { code: 'leftovers-too-large', cutWidth: inches(42), cutLength: inches(10) },
    'Together, these leftovers are bigger than the piece you cut (42 in × 10 in).',
  ],
  'leftover-used': [
    { code: 'leftover-used' },
    'Can’t undo this cut: one of its leftovers has been used since.',
  ],
  'fabric-used-since': [
    { code: 'fabric-used-since' },
    'Can’t undo this: some of its fabric has been used since.',
  ],
  'fabric-set-aside': [
    { code: 'fabric-set-aside' },
    'Can’t undo this: its fabric is set aside for a project. Release it first.',
  ],
  'hold-gone': [
    { code: 'hold-gone' },
    'Can’t undo this: the fabric it set aside has been used or released since.',
  ],
  'value-moved': [
    { code: 'value-moved' },
    'Can’t undo this: part of the fabric it was paid for has been used since.',
  ],
  'project-deleted': [
    { code: 'project-deleted' },
    'Can’t undo this: the project it was set aside for is deleted. Restore the project first with Undo.',
  ],
  'already-undone': [{ code: 'already-undone' }, 'This is undone already.'],
  'place-inside-itself': [
    { code: 'place-inside-itself', place: 'Sewing room', into: 'Sewing room, shelf 2' },
    '“Sewing room, shelf 2” is inside “Sewing room”. Choose a place outside it.',
  ],
  'plan-changed': [
    { code: 'plan-changed' },
    'The cutting plan has changed since this page was shown. Look at it again before you go on.',
  ],
  'nothing-to-undo': [{ code: 'nothing-to-undo' }, 'There is nothing to undo.'],
  'nothing-to-redo': [{ code: 'nothing-to-redo' }, 'There is nothing to redo.'],
  'not-newest-change': [
    { code: 'not-newest-change', says: 'Bought “Rust leaves”' },
    'Other changes came after “Bought “Rust leaves””. Undo those first; History lists them.',
  ],
  'not-a-photo': [
    { code: 'not-a-photo' },
    'This file isn’t a picture that Ringbound can store. JPEG, PNG and WebP up to 40 MB work.',
  ],
  'not-a-pattern-file': [
    { code: 'not-a-pattern-file' },
    'This file can’t be kept with the pattern. PDF, JPEG, PNG and WebP up to 40 MB work.',
  ],
  'table-refused': [{ code: 'table-refused', refusal: { why: 'empty' } }, 'This table is empty.'],
  'table-has-faults': [
    { code: 'table-has-faults', count: 2 },
    'Nothing was imported: 2 cells can’t be read yet.',
  ],
  'file-unreadable': [
    { code: 'file-unreadable', detail: 'no room' },
    'The file can’t be read or written (no room). Check that the disk is connected and has room.',
  ],
  'backup-unusable': [
    { code: 'backup-unusable', detail: 'cut short' },
    'This backup can’t be used (cut short). Nothing was changed; try an older one.',
  ],
  'newer-workshop': [
    { code: 'newer-workshop', found: 90, newestSupported: 50 },
    'This workshop was last used with a newer Ringbound (format 90; this one reads up to 50). Nothing was changed. Open it with the newer program.',
  ],
  unexpected: [
    { code: 'unexpected', detail: 'lost' },
    'Something went wrong in Ringbound itself (lost). What you saved before is safe. Try again, or close Ringbound and open it again.',
  ],
};

const FAULTS: {
  readonly [Code in FieldFault['code']]: readonly [
    field: string,
    fault: Extract<FieldFault, { readonly code: Code }>,
    sentence: string,
  ];
} = {
  empty: ['name', { code: 'empty' }, 'Fill in the name.'],
  'text-too-long': [
    'note',
    { code: 'text-too-long', maximum: 500 },
    'Shorten the note to 500 characters or fewer.',
  ],
  'too-small': [
    'length',
    { code: 'too-small', minimum: inches(1 / 64) },
    'Too small: the length. Enter 1/64 in or more.',
  ],
  'too-large': [
    'width',
    { code: 'too-large', maximum: inches(120) },
    'Too large: the width. Enter 120 in or less.',
  ],
  'too-few': ['count', { code: 'too-few', minimum: 1 }, 'Too few: how many. Enter 1 or more.'],
  'too-many': ['count', { code: 'too-many', maximum: 40 }, 'Too many: how many. Enter 40 or fewer.'],
  'not-whole': ['silentDays', { code: 'not-whole' }, 'Enter a whole number: the days without news.'],
  'zero-character': [
    'notes',
    { code: 'zero-character' },
    'There is a character in the notes that can’t be saved. Type it again.',
  ],
  unreadable: ['sentOn', { code: 'unreadable' }, 'Check the day it was sent: it can’t be read.'],
};

const MISSING: Readonly<Record<RecordKind, string>> = {
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

describe('the words of a problem', () => {
  it.each(Object.values(PROBLEMS))('of %o are one kept sentence', (problem: Problem, sentence: string) => {
    expect(problemWords(problem, inch)).toBe(sentence);
  });

  it.each(Object.entries(MISSING))('name a %s that is not found', (kind, words) => {
    expect(problemWords({ code: 'not-found', kind: kind as RecordKind }, inch)).toBe(
      `Can’t find ${words}. It may have been deleted; Undo brings it back.`,
    );
  });

  it.each(Object.values(FAULTS))('of the field %s with %o say what to enter', (field, fault, sentence) => {
    expect(problemWords({ code: 'invalid-input', fields: [{ path: [field], fault }] }, inch)).toBe(sentence);
  });

  it('are in the units of the maker, never in the units of the store', () => {
    expect(problemWords({ code: 'more-than-set-aside', held: inches(18) }, metric)).toBe(
      'Only 45.7 cm is set aside. Enter 45.7 cm or less.',
    );
    for (const [problem] of Object.values(PROBLEMS)) {
      expect(problemWords(problem, metric)).not.toMatch(/\d{5}/);
    }
  });

  it('name no number for money, whose currency they do not know', () => {
    const fault = { code: 'too-large', maximum: 100_000_000 } as const;
    expect(problemWords({ code: 'invalid-input', fields: [{ path: ['costMinor'], fault }] }, inch)).toBe(
      'Too large: the cost. Enter a smaller amount.',
    );
  });

  it('say of a contact with trips why it stays', () => {
    expect(problemWords({ code: 'in-use', kind: 'contact', name: 'Pell Tallowmere' }, inch)).toBe(
      '“Pell Tallowmere” is on record for a trip, so this contact can’t be deleted.',
    );
  });

  it('pass over fields that nobody types', () => {
    const id = { path: ['stageId'], fault: { code: 'unreadable' } } as const;
    const name = { path: ['lines', 0, 'name'], fault: { code: 'empty' } } as const;
    expect(problemWords({ code: 'invalid-input', fields: [id, name] }, inch)).toBe('Fill in the name.');
    expect(problemWords({ code: 'invalid-input', fields: [id] }, inch)).toBe(
      'Something in this form can’t be read. Check it and try again.',
    );
  });

  it('say at a length field what was typed and what to type', () => {
    expect(lengthProblemWords({ code: 'ambiguous', read: '1,250', expected: ['1250 in', '1.25 in'] })).toBe(
      '“1,250” can mean two things. Write 1250 in or 1.25 in.',
    );
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PieceKind, pieceKindSchema, printDirectionSchema, printRunsSchema } from '#core/domain/stash';
import { addDays } from '#core/units/calendar-date';
import { lengthFromUnits } from '#core/units/length';
import type { PartialDate } from '#core/units/partial-date';
import { chosenFile, exported } from '#test/helpers/stash-tables';
import { openWorkshop, TODAY, type TestWorkshop } from '#test/helpers/workshop';

/** Text of every kind, with some that a spreadsheet or a table reader could misread. */
const anyText = (most: number) =>
  fc.oneof(
    fc.constantFrom(
      '',
      '=1+2',
      "'=1",
      "''",
      '-',
      '+4',
      '@a',
      '"',
      'a "b" c',
      'a,b;c\td',
      'ümlaut 布 🧵',
      "'",
    ),
    fc
      .string({ maxLength: 12, unit: 'grapheme' })
      .map((text) => text.replaceAll('\0', '').trim().slice(0, most)),
  );
const notes = fc.oneof(anyText(60), fc.constantFrom(' two\r\nlines ', '\tx', '\n=1', ' ', "'\r"));
const length = fc.integer({ min: 127, max: 3_200_000 }).map(lengthFromUnits);

const piece = fc.record({
  kind: fc.constantFrom(...pieceKindSchema.options),
  kindName: fc.constantFrom('', 'Yardage', 'Roll of my own', '=Kind'),
  width: length,
  length,
  isPack: fc.boolean(),
  place: fc.constantFrom('', 'Shelf 2', 'Room, bin 3'),
  runs: fc.constantFrom(...printRunsSchema.options),
  costMinor: fc.option(fc.nat(9_999_999)),
  on: fc.oneof(
    fc.nat(9_000).map((days) => addDays(TODAY, 0 - days)),
    fc.constantFrom('2024-03', '1999', null).map((text) => text as PartialDate | null),
  ),
});
const fabric = fc.record({
  details: fc.record({
    name: anyText(60).map((text) => (text === '' ? 'No name' : text)),
    print: anyText(60),
    colorWords: anyText(60),
    fiber: anyText(60),
    direction: fc.constantFrom(...printDirectionSchema.options),
    width: length,
    isWashed: fc.boolean(),
    supplier: anyText(60),
    place: fc.constantFrom('', 'Shelf 2', 'Room, shelf 1'),
    swatch: fc.constantFrom('#a0522d', '#000000'),
    notes,
  }),
  pieces: fc.array(piece, { maxLength: 3 }),
});

type Stash = readonly (typeof fabric extends fc.Arbitrary<infer One> ? One : never)[];

function fill(workshop: TestWorkshop, stash: Stash): void {
  for (const { details, pieces } of stash) {
    const { fabricId } = workshop.get('fabric:create', { details });
    for (const { width, length: long, isPack, kindName, runs, ...rest } of pieces) {
      const kindId = kindName === '' ? null : kindNamed(workshop, rest.kind, kindName);
      const { pieceId } = workshop.get('ledger:buy', {
        fabricId,
        kindId,
        size: { width, length: long },
        unitLength: isPack ? long : null,
        note: '',
        ...rest,
      });
      workshop.get('piece:set-print', { pieceId, runs });
      // Some are measured again, down to almost nothing.
      if (long % 3 === 0)
        workshop.get('ledger:count', { pieceId, there: lengthFromUnits(long % 200), on: TODAY, note: '' });
    }
  }
}

function kindNamed({ get }: TestWorkshop, form: PieceKind, name: string) {
  const found = get('kind:list', {}).find((kind) => kind.form === form && kind.name === name);
  const details = { form, name, width: null, length: null, count: null, isHidden: false };
  return found?.id ?? get('kind:save', { kindId: null, details }).kindId;
}

/** A stash without its identifiers: the details of its fabrics and the pieces of each, in order. */
function stashOf({ get }: TestWorkshop): readonly string[] {
  const kindNames = new Map(get('kind:list', {}).map(({ id, name }) => [id, name]));
  const glances = get('fabric:list', { search: '' }).items;
  return glances
    .map(({ fabric: { id: _id, photoId: _photo, createdAt: _at, ...details }, pieces }) =>
      JSON.stringify([
        details,
        pieces.map(({ kind, kindId, unitLength, place, printRuns, width, there, valueMinor }) => [
          kind,
          kindId === null ? '' : kindNames.get(kindId),
          unitLength,
          place,
          printRuns,
          width,
          there,
          valueMinor,
        ]),
      ]),
    )
    .sort();
}

test.each(['csv', 'json'] as const)(
  'a stash exported as %s and imported again is the same stash, to the last unit',
  (as) => {
    fc.assert(
      fc.property(fc.array(fabric, { maxLength: 5 }), (stash) => {
        const [first, second] = [openWorkshop(), openWorkshop()];
        for (const { context } of [first, second]) context.store.database.pragma('synchronous = OFF');
        fill(first, stash);
        const text = exported(first, as);
        if (stash.length > 0) second.get('table:import', chosenFile(second, text));
        expect(stashOf(second)).toEqual(stashOf(first));
        expect(exported(second, as)).toBe(text);
        for (const { context } of [first, second]) context.store.database.close();
      }),
      { numRuns: 20, endOnFailure: true },
    );
  },
  120_000,
);

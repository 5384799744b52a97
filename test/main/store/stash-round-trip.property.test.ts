import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PieceKind, pieceKindSchema, printDirection, printRuns } from '#core/domain/stash';
import { addDays } from '#core/units/calendar-date';
import { lengthFromUnits } from '#core/units/length';
import { chosenFile, exported } from '#test/helpers/stash-tables';
import { openWorkshop, TODAY, type TestWorkshop } from '#test/helpers/workshop';

/** Texts of every kind, those a spreadsheet or a reader of tables could take for something else among them. */
const said = (most: number) =>
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
const notes = fc.oneof(said(60), fc.constantFrom(' two\r\nlines ', '\tx', '\n=1', ' ', "'\r"));
const length = fc.integer({ min: 127, max: 3_200_000 }).map(lengthFromUnits);

const piece = fc.record({
  kind: fc.constantFrom(...pieceKindSchema.options),
  kindName: fc.constantFrom('', 'Yardage', 'Roll of my own', '=Kind'),
  width: length,
  length,
  isPack: fc.boolean(),
  place: fc.constantFrom('', 'Shelf 2', 'Room, bin 3'),
  runs: fc.constantFrom(...printRuns.options),
  costMinor: fc.nat(9_999_999),
  on: fc.nat(9_000).map((days) => addDays(TODAY, 0 - days)),
});
const fabric = fc.record({
  details: fc.record({
    name: said(60).map((text) => (text === '' ? 'No name' : text)),
    print: said(60),
    colorWords: said(60),
    fiber: said(60),
    direction: fc.constantFrom(...printDirection.options),
    width: length,
    isWashed: fc.boolean(),
    supplier: said(60),
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
      const kindId = kindName === '' ? null : keptKind(workshop, rest.kind, kindName);
      const { pieceId } = workshop.get('ledger:buy', {
        fabricId,
        kindId,
        size: { width, length: long },
        unitLength: isPack ? long : null,
        note: '',
        ...rest,
      });
      workshop.get('piece:set-print', { pieceId, runs });
      // Some are cut or counted down to the last hair.
      if (long % 3 === 0)
        workshop.get('ledger:count', { pieceId, there: lengthFromUnits(long % 200), on: TODAY, note: '' });
    }
  }
}

function keptKind({ get }: TestWorkshop, form: PieceKind, name: string) {
  const known = get('kind:list', {}).find((kind) => kind.form === form && kind.name === name);
  const details = { form, name, width: null, length: null, count: null, isHidden: false };
  return known?.id ?? get('kind:keep', { kindId: null, details }).kindId;
}

/** What a stash is, whatever its identifiers: its fabrics as they are said to be and the pieces of each, in their order. */
function stashOf({ get }: TestWorkshop): readonly string[] {
  const kindNames = new Map(get('kind:list', {}).map(({ id, name }) => [id, name]));
  const glances = get('fabric:list', { search: '' }).items;
  return glances
    .map(({ fabric: { id: _id, photoId: _photo, createdAt: _at, ...details }, pieces }) =>
      JSON.stringify([
        details,
        pieces.map(({ kind, kindId, unitLength, place, printRuns: lies, width, there, valueMinor }) => [
          ...[kind, kindId === null ? '' : kindNames.get(kindId), unitLength, place, lies],
          ...[width, there, valueMinor],
        ]),
      ]),
    )
    .sort();
}

test.each(['csv', 'json'] as const)(
  'a stash written as %s and read again is the same stash, to the last unit',
  (as) => {
    fc.assert(
      fc.property(fc.array(fabric, { maxLength: 5 }), (stash) => {
        const [first, second] = [openWorkshop(), openWorkshop()];
        for (const { context } of [first, second]) context.store.database.pragma('synchronous = OFF');
        fill(first, stash);
        const text = exported(first, as);
        if (stash.length > 0) second.get('table:bring-in', chosenFile(second, text));
        expect(stashOf(second)).toEqual(stashOf(first));
        expect(exported(second, as)).toBe(text);
        for (const { context } of [first, second]) context.store.database.close();
      }),
      { numRuns: 20, endOnFailure: true },
    );
  },
  120_000,
);

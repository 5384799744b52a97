import { readFileSync } from 'node:fs';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { CellFault } from '#core/domain/stash-table';
import { lengthFromMillimeters } from '#core/units/length';
import { chosenFile, exported, offered, pasted } from '#test/helpers/stash-tables';
import { addStock, inches, openWorkshop, temporaryFolder, type TestWorkshop } from '#test/helpers/workshop';

const TABLE = 'Name\tColor\tSize\tPaid\nKettle blue\tdeep blue\t1 1/4 yd\t12.50\nMoss\tgreen\tFQ\t3\n';

const fabrics = ({ get }: TestWorkshop) => get('fabric:list', { search: '' }).items;
const places = (faults: readonly CellFault[]) =>
  faults.map(({ line, column, problem }) => [line, column, problem.kind]);

describe('a file after its preview', () => {
  test('is read again if it has changed', () => {
    const workshop = openWorkshop();
    const file = path.join(temporaryFolder(), 'stash.csv');
    fs.writeFileSync(file, 'Name,Size\nMoss,1 yd\n');
    const table = offered(workshop, file);
    expect(workshop.get('table:preview', table).lines).toBe(1);
    fs.writeFileSync(file, 'Name,Size\nFern,1 yd\nHeath,2 yd\n');
    workshop.get('table:import', table);
    expect(fabrics(workshop).map(({ fabric }) => fabric.name)).toEqual(['Fern', 'Heath']);
  });

  test('is read again if the settings have changed', () => {
    const workshop = openWorkshop();
    const table = chosenFile(workshop, 'Name,Size\nMoss,10 x 12\n');
    expect(workshop.get('table:preview', table).preview[0]?.piece?.length).toBe(inches(12));
    const { workshop: before } = workshop.get('workshop:opening', {});
    const settings = { ...before.settings, unitSystem: 'metric' as const };
    workshop.get('workshop:change', { workshop: { ...before, settings } });
    workshop.get('table:import', table);
    expect(fabrics(workshop)[0]?.pieces[0]?.there).toBe(lengthFromMillimeters(120));
  });
});

describe('a pasted table', () => {
  test('is shown as it would be imported, and changes nothing yet', () => {
    const workshop = openWorkshop();
    const reading = workshop.get('table:preview', pasted(TABLE));
    expect(reading).toMatchObject({
      mapping: ['name', 'color-words', 'size', 'cost'],
      hasTitles: true,
      lines: 2,
      faultCount: 0,
      adds: { fabrics: 2, pieces: 2, costMinor: 1_550, unpriced: 0 },
    });
    expect(reading.columns[2]).toEqual({ title: 'Size', samples: ['1 1/4 yd', 'FQ'] });
    expect(fabrics(workshop)).toEqual([]);
  });

  test('is imported as fabrics with bought pieces, and undone with one undo', () => {
    const workshop = openWorkshop();
    expect(workshop.get('table:import', pasted(TABLE))).toMatchObject({ fabrics: 2, pieces: 2 });
    expect(
      fabrics(workshop).map(({ fabric, pieces, value }) => [fabric.name, pieces.length, value.minor]),
    ).toEqual([
      ['Kettle blue', 1, 1_250],
      ['Moss', 1, 300],
    ]);
    const size = { kind: 'fat-quarter', width: inches(22), there: inches(18) };
    expect(fabrics(workshop)[1]?.pieces[0]).toMatchObject(size);
    expect(workshop.get('change:undo', {}).says).toBe('Imported 2 pieces of fabric');
    expect(fabrics(workshop)).toEqual([]);
    workshop.get('change:redo', {});
    expect(fabrics(workshop)).toHaveLength(2);
  });

  test('is read by the columns the maker chooses, even without titles', () => {
    const workshop = openWorkshop();
    const text = 'Moss;1 yd;7\nFern;2 yd;8\n';
    expect(workshop.get('table:preview', pasted(text))).toMatchObject({
      hasTitles: false,
      mapping: [null, 'size', null],
    });
    const mapped = pasted(text, { mapping: ['name', 'size', null] });
    expect(workshop.get('table:preview', mapped)).toMatchObject({
      lines: 2,
      faultCount: 0,
      adds: { fabrics: 2, pieces: 2, costMinor: 0 },
    });
  });

  test('names each bad cell by line and column, and leaves only its row out', () => {
    const workshop = openWorkshop();
    const text = [
      'Name,Size,Paid,Bought on,Kind,Usable width',
      'Moss,44 lightyears,3,2027-02-28,yardage,42 in',
      ',1 yd,-3,31.02.2027,yardage,42 in',
      '"Fern, tall",-1 yd,12.345,,carpet,0 in',
      'Fine,1 yd,,,,',
    ].join('\n');
    const reading = workshop.get('table:preview', pasted(text));
    expect(places(reading.faults)).toEqual([
      [2, 2, 'length'],
      [3, 1, 'missing'],
      [3, 3, 'negative'],
      [3, 4, 'date'],
      [4, 6, 'out-of-range'],
      [4, 2, 'length'],
      [4, 5, 'unknown'],
      [4, 3, 'money'],
    ]);
    expect(reading.faults[0]?.problem).toMatchObject({
      problem: { code: 'unknown-unit', read: '44 lightyears' },
    });
    expect(reading).toMatchObject({ faultyRows: 3, lines: 4 });
    workshop.get('table:import', pasted(text));
    expect(fabrics(workshop).map(({ fabric }) => fabric.name)).toEqual(['Fine']);
  });

  test('is refused if no row of it can be read', () => {
    const workshop = openWorkshop();
    const text = 'Name,Size\nMoss,44 lightyears\n';
    expect(workshop.fail('table:import', pasted(text))).toEqual({ code: 'table-has-faults', count: 1 });
    expect(fabrics(workshop)).toEqual([]);
  });

  test('takes the cells that were written anew, and nothing else of the row is lost', () => {
    const workshop = openWorkshop();
    const text = 'Name,Size,Paid\nMoss,a bit,7\nFern,1 yd,8\n';
    const mends = [{ line: 2, column: 2, text: '1/2 yd' }];
    expect(workshop.get('table:preview', pasted(text))).toMatchObject({
      faultyRows: 1,
      faults: [{ line: 2, column: 2, text: 'a bit' }],
    });
    expect(workshop.get('table:import', pasted(text, { mends }))).toMatchObject({
      pieces: 2,
      costMinor: 1500,
    });
  });

  test('asks for the amount of a row that has a price and no size', () => {
    const workshop = openWorkshop();
    const reading = workshop.get('table:preview', pasted('Name,Size,Paid\nMoss,,7\n'));
    expect(places(reading.faults)).toEqual([[2, 2, 'missing']]);
  });

  test('joins rows of one name and color on request, with the place and notes of each', () => {
    const workshop = openWorkshop();
    const text =
      'Name,Color,Size,Shelf,Notes\nCream,cream,1 yd,Attic,for Ada\nCream,cream,2 yd,Hall,flecked\n';
    expect(workshop.get('table:preview', pasted(text))).toMatchObject({
      sameNameCount: 1,
      adds: { fabrics: 2 },
    });
    workshop.get('table:import', pasted(text, { sameNames: 'one-fabric' }));
    const [cream, ...others] = fabrics(workshop);
    expect(others).toEqual([]);
    expect(cream?.fabric).toMatchObject({ place: 'Attic', notes: 'for Ada\nflecked' });
    expect(cream?.pieces.map(({ place }) => place)).toEqual(['', 'Hall']);
  });

  test('counts lines as a text editor does, even after a cell of several lines', () => {
    const workshop = openWorkshop();
    const text = 'Name,Notes,Size\r\nMoss,"two\r\nlines",1 yd\r\n\r\nFern,,a bit\r\n';
    expect(places(workshop.get('table:preview', pasted(text)).faults)).toEqual([[5, 3, 'length']]);
  });

  test('never runs a formula: a guarded cell is read as its text', () => {
    const workshop = openWorkshop();
    workshop.get('table:import', pasted("Name,Notes\n'=1+2,'@home\n"));
    expect(fabrics(workshop)[0]?.fabric).toMatchObject({ name: '=1+2', notes: '@home' });
    for (const line of exported(workshop, 'csv').split('\r\n')) {
      for (const cell of line.split(',')) expect(cell.replace(/^"/, '')).not.toMatch(/^[=+\-@\t]/);
    }
  });
});

describe('a spreadsheet as a maker keeps it', () => {
  const MESSY = readFileSync('test/fixtures/messy-stash.csv', 'utf8');

  test('comes in at the first try: columns, amounts, dates and colors as people write them', () => {
    const workshop = openWorkshop();
    const reading = workshop.get('table:preview', pasted(MESSY));
    expect(reading.mapping).toEqual([
      'name',
      'color-words',
      'size',
      'cost',
      'bought-on',
      'supplier',
      'place',
      'washed',
      'notes',
    ]);
    // “Two armfuls” is the one cell that nobody can read.
    expect(places(reading.faults)).toEqual([[16, 3, 'length']]);
    expect(reading).toMatchObject({ lines: 15, faultyRows: 1, sameNameCount: 1 });
    const mends = [{ line: 16, column: 3, text: '2 yd' }];
    expect(workshop.get('table:import', pasted(MESSY, { mends }))).toMatchObject({ fabrics: 15, pieces: 14 });

    const all = fabrics(workshop);
    const piecesOf = (name: string) =>
      all.filter(({ fabric }) => fabric.name === name).flatMap(({ pieces }) => pieces);
    const thereOf = (name: string) => piecesOf(name).map(({ there }) => there / inches(1));
    expect([thereOf('Rust leaves'), thereOf('Teal check'), thereOf('Gray linen')]).toEqual([
      [54],
      [90],
      [24],
    ]);
    expect(thereOf('Cream solid').toSorted()).toEqual([108, 18]);
    expect(piecesOf('Moss dots')).toMatchObject([
      { kind: 'fat-quarter', there: inches(54), unitLength: inches(18) },
    ]);
    expect(piecesOf('Gold bits')).toEqual([]);
    expect(all.find(({ fabric }) => fabric.name === 'Gold bits')?.fabric.notes).toContain('scrap');
    expect(all.find(({ fabric }) => fabric.name === 'Navy stars')?.fabric.swatch).toBe('#263252');
  });

  test('has costs and days that are not known, and none that are made up', () => {
    const workshop = openWorkshop();
    workshop.get('table:import', pasted(MESSY));
    const bought = (name: string) => {
      const { fabric } = fabrics(workshop).find((one) => one.fabric.name === name)!;
      const [booking] = workshop.get('fabric:open', { fabricId: fabric.id }).ledger;
      return [booking?.entries[0]?.costChange ?? null, booking?.on ?? null];
    };
    expect(bought('Rust leaves')).toEqual([1_800, '2025-03-14']);
    expect(bought('Teal check')).toEqual([2_400, '2025-06-01']);
    expect(bought('Plum vine')).toEqual([400, null]);
    expect(bought('Peach fuzz')).toEqual([1_000, null]);
  });
});

describe('what is in the stash already', () => {
  test('is left out, so that importing a table again adds nothing', () => {
    const workshop = openWorkshop();
    workshop.get('table:import', pasted(TABLE));
    expect(workshop.get('table:preview', pasted(TABLE))).toMatchObject({
      alreadyHere: 2,
      adds: { fabrics: 0, pieces: 0, costMinor: 0 },
    });
    workshop.get('table:import', pasted(TABLE));
    expect(workshop.get('change:undo', {}).says).toBe('Imported 2 pieces of fabric');
    expect(fabrics(workshop)).toEqual([]);
  });

  test('gets another piece if the table has one that the stash has not', () => {
    const workshop = openWorkshop();
    workshop.get('table:import', pasted(TABLE));
    const more = 'Name,Color,Size\nKETTLE blue,deep blue,1 1/4 yd\nKettle Blue,deep blue,3 yd\n';
    expect(workshop.get('table:preview', pasted(more))).toMatchObject({
      alreadyHere: 1,
      adds: { fabrics: 0, pieces: 1 },
    });
    workshop.get('table:import', pasted(more));
    expect(fabrics(workshop)[0]?.pieces.map(({ there }) => there)).toEqual([inches(45), inches(108)]);
  });

  test('is compared with repeated rows of the table too, which are added if the maker says so', () => {
    const workshop = openWorkshop();
    const twice = 'Name,Size\nMoss,FQ\nFern,FQ\nMoss,FQ\n';
    expect(workshop.get('table:preview', pasted(twice))).toMatchObject({
      repeats: [{ line: 4, sameAs: 2 }],
      repeatCount: 1,
      adds: { fabrics: 2, pieces: 2 },
    });
    const all = pasted(twice, { repeats: 'add' });
    expect(workshop.get('table:import', all)).toMatchObject({ fabrics: 2, pieces: 3 });
  });
});

describe('a file', () => {
  const refused = (workshop: TestWorkshop, content: string | Uint8Array) =>
    workshop.fail('table:preview', chosenFile(workshop, content));

  test('of 2 GB is refused by its size, without being read', () => {
    const workshop = openWorkshop();
    const file = path.join(temporaryFolder(), 'huge.csv');
    fs.closeSync(fs.openSync(file, 'w'));
    fs.truncateSync(file, 2 ** 31);
    const before = process.memoryUsage().rss;
    expect(workshop.fail('table:preview', offered(workshop, file))).toEqual({
      code: 'table-refused',
      refusal: { why: 'too-large', bytes: 2 ** 31, most: 64 * 2 ** 20 },
    });
    expect(process.memoryUsage().rss - before).toBeLessThan(64 * 2 ** 20);
  });

  test.each([
    ['that is empty', '', { why: 'empty' }],
    ['with bytes that are not text', Uint8Array.of(0x4e, 0x0a, 0x00, 0x01), { why: 'not-text', line: 2 }],
    [
      'in another encoding',
      Buffer.concat([Buffer.from('Name,Size\nMoss,1 yd\nCr'), Buffer.of(0xe8), Buffer.from('me,1 yd\n')]),
      { why: 'wrong-encoding', line: 3, column: 3 },
    ],
    [
      'whose quotation mark is left open',
      'Name,Size\nMoss,1 yd\n"Fern,1 yd\nFir,2 yd\n',
      { why: 'quote-left-open', line: 3 },
    ],
    [
      'with a stray quotation mark',
      'Name,Size\nMoss,1 yd\n"Fern" tall,1 yd\n',
      { why: 'stray-quote', line: 3 },
    ],
    [
      'of one endless line',
      `Name,Size\n"${'x'.repeat(1_500_000)}`,
      { why: 'line-too-long', line: 2, most: 1_000_000 },
    ],
    ['of too many lines', `Name\n${'a\n'.repeat(200_001)}`, { why: 'too-many-lines', most: 200_000 }],
    ['of too many columns', `Name\n${','.repeat(300)}x\n`, { why: 'too-many-columns', line: 2, most: 200 }],
    [
      'of JSON that breaks off',
      '{\n "format": "ringbound-stash",\n "version":',
      { why: 'not-json', line: 3, column: 12 },
    ],
    [
      'of JSON that is not a stash',
      '{"format":"ringbound-stash","version":1,"currency":"USD","fabrics":[{}]}',
      { why: 'not-a-stash-file', at: 'fabrics[0].name' },
    ],
    [
      'in another currency',
      '{"format":"ringbound-stash","version":1,"currency":"EUR","fabrics":[]}',
      { why: 'other-currency', found: 'EUR' },
    ],
  ])('%s is refused with the reason', (_what, content, refusal) => {
    const workshop = openWorkshop();
    expect(refused(workshop, content)).toMatchObject({ code: 'table-refused', refusal });
  });

  test('in another encoding is read in the one the maker chooses or its first bytes name', () => {
    const workshop = openWorkshop();
    const western = Buffer.concat([Buffer.from('Name\nCr'), Buffer.of(0xe8), Buffer.from('me\n')]);
    const first = (content: Uint8Array, changes = {}) =>
      workshop.get('table:preview', chosenFile(workshop, content, changes)).preview[0]?.details.name;
    expect(first(western, { encoding: 'windows-1252' })).toBe('Crème');
    expect(first(Buffer.from('\ufeffName\nCrème\n', 'utf16le'))).toBe('Crème');
    expect(first(Buffer.from('\ufeffName\nCrème\n', 'utf8'))).toBe('Crème');
  });

  test('that is gone, or was never chosen, is refused as gone', () => {
    const workshop = openWorkshop();
    const gone = { code: 'table-refused', refusal: { why: 'gone' } };
    expect(workshop.fail('table:preview', offered(workshop, path.join(temporaryFolder(), 'none')))).toEqual(
      gone,
    );
    const token = '11111111-1111-4111-8111-111111111111' as never;
    expect(workshop.fail('table:preview', pasted('', { source: { kind: 'file', token } }))).toEqual(gone);
  });

  test('of JSON names a problem by its place', () => {
    const workshop = openWorkshop();
    addStock(workshop);
    const data = exported(workshop, 'json').replace('"length": "1828.8 mm"', '"length": "very long"');
    const reading = workshop.get('table:preview', chosenFile(workshop, data));
    expect(reading.faults).toMatchObject([{ at: 'fabrics[0].pieces[0]', field: 'piece-length' }]);
  });
});

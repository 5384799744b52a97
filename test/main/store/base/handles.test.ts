import fc from 'fast-check';
import { expect, test } from 'vitest';
import { insertRow, insertRows, type WritableStore } from '#main/store/base/handles';
import { openWorkshop } from '#test/helpers/workshop';

const anyText = fc.string({ unit: 'binary' });
const brokenText = fc.string({ unit: fc.constantFrom('\ud800', '\udc00', '\0', '\\ud800', '"', 'a') });
const text = fc.option(fc.oneof(anyText, brokenText));
const number = fc.option(fc.maxSafeInteger());

test('rows inserted by the thousand equal rows inserted one by one, whatever their text', () => {
  const store = openWorkshop().context.store as WritableStore;
  store.database.exec(
    'CREATE TEMP TABLE one (seq INTEGER PRIMARY KEY, first TEXT, second INTEGER) STRICT; CREATE TEMP TABLE many (seq INTEGER PRIMARY KEY, first TEXT, second INTEGER) STRICT',
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(text, number), { maxLength: 20 }), (rows) => {
      store.database.exec('DELETE FROM one; DELETE FROM many');
      for (const [first, second] of rows) insertRow(store, 'one', { first, second });
      insertRows(store, 'many', ['first', 'second'], rows);
      const all = (table: string) => store.database.prepare(`SELECT * FROM ${table} ORDER BY seq`).all();
      expect(all('many')).toEqual(all('one'));
    }),
  );
  insertRows(
    store,
    'many',
    ['seq', 'second'],
    Array.from({ length: 2_500 }, (_row, index) => [index + 100, index]),
  );
  expect(
    store.database
      .prepare('SELECT count(*), min(second), max(second) FROM many WHERE seq >= 100')
      .raw()
      .get(),
  ).toEqual([2_500, 0, 2_499]);
});

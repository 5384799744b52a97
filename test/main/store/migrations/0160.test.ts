import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, inches, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const id = (last: string) => `00000000-0000-4000-8000-0000000000${last}`;

/** Two fabrics 10 in wide: one bought twice, the second purchase at a higher price and undone; one never bought, with its own price. */
const OLD_SHELF = `
  INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '${id('aa')}', 'Bought it', 1, 0);
  UPDATE current_change SET change_seq = 1;
  INSERT INTO fabric (seq, id, name, print, color_words, fiber, direction, width, is_washed, supplier, swatch, notes, created_at)
    VALUES (1, '${id('f1')}', 'Bought', '', '', '', 'any', ${inches(10)}, 0, '', '#a0522d', '', 1),
      (2, '${id('f2')}', 'Priced', '', '', '', 'any', ${inches(10)}, 0, '', '#a0522d', '', 1767225600000);
  INSERT INTO fabric_price (id, fabric_id, price_minor, for_length) VALUES ('${id('d1')}', '${id('f2')}', 700, ${inches(1)});
  INSERT INTO cloth_piece (seq, id, fabric_seq, kind, width)
    VALUES (1, '${id('c1')}', 1, 'yardage', ${inches(10)}), (2, '${id('c2')}', 1, 'yardage', ${inches(10)});
  INSERT INTO booking (seq, id, fabric_seq, note, on_date, recorded_at, takes_back) VALUES
    (1, '${id('b1')}', 1, '', '2025-03-01', 1, NULL), (2, '${id('b2')}', 1, '', '2025-04-01', 2, NULL),
    (3, '${id('b3')}', 1, '', '2025-04-02', 3, 2);
  INSERT INTO ledger_entry (seq, id, booking_seq, piece_seq, kind, length_change, held_change, value_change, reverses) VALUES
    (1, '${id('e1')}', 1, 1, 'bought', ${inches(2)}, 0, 1000, NULL), (2, '${id('e2')}', 2, 2, 'bought', ${inches(2)}, 0, 1800, NULL),
    (3, '${id('e3')}', 3, 2, 'taken-back', -${inches(2)}, 0, -1800, 2);
  UPDATE current_change SET change_seq = NULL;
`;

test('older pieces are found by their price and the day they came', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(150, file);
  older.exec(OLD_SHELF);
  older.close();
  const { get } = openWorkshop(file);
  const found = (filter: object) =>
    get('fabric:list', { search: '', filter }).items.map(({ fabric }) => fabric.name);
  const priced = (counted: 'again' | 'paid', minor: number) =>
    found({ price: { counted, length: inches(1), atLeast: minor, atMost: minor } });
  expect(priced('paid', 500)).toEqual(['Bought']);
  expect(priced('again', 500)).toEqual(['Bought']);
  expect(priced('again', 700)).toEqual(['Priced']);
  expect(found({ boughtUntil: '2025-03-01' })).toEqual(['Bought']);
  expect(found({ boughtFrom: '2025-03-02' })).toEqual(['Priced']);
  get('fabric:set-price', { fabricId: id('f2') as never, price: null });
  expect(priced('again', 700)).toEqual([]);
  get('change:undo', {});
  expect(priced('again', 700)).toEqual(['Priced']);
});

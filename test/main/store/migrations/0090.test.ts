import path from 'node:path';
import { expect, test } from 'vitest';
import type { StashFilter, StashOrder } from '#core/domain/stash-filter';
import { createStoreAt, inches, openWorkshop, temporaryFolder, TODAY } from '#test/helpers/workshop';

const id = (last: string) => `00000000-0000-4000-8000-0000000000${last}`;

/**
 * A workshop of the version before: leaves with a piece of 72 in, of which 20 in are set aside, and a fat quarter; dots with a piece
 * of 60 in, bought later in a change of its own; and a deleted fabric.
 */
function olderWorkshop(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(80, file);
  older.exec(`
    INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '${id('aa')}', 'Added it', 1, 0), (2, '${id('ab')}', 'Bought it', 2, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO project (seq, id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived, created_at, changed_at)
      VALUES (1, '${id('a1')}', 'Ring', 'own', '', '{"shape":"circle","diameter":406400}', 0, '{}', '', 0, 1, 1);
    INSERT INTO fabric (seq, id, name, print, color_words, fiber, direction, width, is_washed, supplier, swatch, notes, created_at, deleted_at)
      VALUES (1, '${id('f1')}', 'Rust leaves', '', '', '', 'one-way', ${inches(42)}, 1, '', '#a0522d', '', 1, NULL),
        (2, '${id('f2')}', 'Blue dots', '', '', '', 'any', ${inches(42)}, 1, '', '#20409a', '', 2, NULL),
        (3, '${id('f3')}', 'Gone stripes', '', '', '', 'any', ${inches(42)}, 1, '', '#20409a', '', 3, 4);
    INSERT INTO cloth_piece (seq, id, fabric_seq, kind, width) VALUES
      (1, '${id('c1')}', 1, 'yardage', ${inches(42)}), (2, '${id('c2')}', 1, 'fat-quarter', ${inches(22)}),
      (3, '${id('c3')}', 2, 'yardage', ${inches(42)});
    INSERT INTO booking (seq, id, fabric_seq, project_seq, note, on_date, recorded_at) VALUES
      (1, '${id('b1')}', 1, NULL, '', '${TODAY}', 1), (2, '${id('b2')}', 1, 1, '', '${TODAY}', 2);
    INSERT INTO ledger_entry (seq, id, booking_seq, piece_seq, kind, length_change, held_change, value_change) VALUES
      (1, '${id('e1')}', 1, 1, 'bought', ${inches(72)}, 0, 1000), (2, '${id('e2')}', 1, 2, 'bought', ${inches(18)}, 0, 300),
      (3, '${id('e3')}', 2, 1, 'set-aside', 0, ${inches(20)}, 0);
    INSERT INTO change_booking VALUES (1, 1), (1, 2);
    UPDATE current_change SET change_seq = 2;
    INSERT INTO booking (seq, id, fabric_seq, note, on_date, recorded_at) VALUES (3, '${id('b3')}', 2, '', '${TODAY}', 3);
    INSERT INTO ledger_entry (seq, id, booking_seq, piece_seq, kind, length_change, held_change, value_change)
      VALUES (4, '${id('e4')}', 3, 3, 'bought', ${inches(60)}, 0, 900);
    INSERT INTO change_booking VALUES (2, 3);
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  return file;
}

function search(workshop: ReturnType<typeof openWorkshop>) {
  return (filter: StashFilter, order: StashOrder = 'name', words = '') =>
    workshop.get('fabric:list', { search: words, filter, order }).items.map(({ fabric }) => fabric.name);
}

test('an older stash can be filtered and ordered at once, without its deleted fabric', () => {
  const found = search(openWorkshop(olderWorkshop()));
  expect(found({})).toEqual(['Blue dots', 'Rust leaves']);
  expect(found({ kind: 'yardage' })).toEqual(['Blue dots', 'Rust leaves']);
  expect(found({ kind: 'fat-quarter' })).toEqual(['Rust leaves']);
  expect(found({ direction: 'one-way' })).toEqual(['Rust leaves']);
  expect(found({ freeAtLeast: inches(52) })).toEqual(['Blue dots', 'Rust leaves']);
  expect(found({ freeAtLeast: inches(53) })).toEqual(['Blue dots']);
  // Free: 42 × 52 and 22 × 18 of the leaves, 42 × 60 of the dots (worked out).
  expect(found({}, 'most-free')).toEqual(['Rust leaves', 'Blue dots']);
  expect(found({}, 'oldest')).toEqual(['Rust leaves', 'Blue dots']);
  expect(found({}, 'newest')).toEqual(['Blue dots', 'Rust leaves']);
});

test('words of an older stash are found despite a wrong letter', () => {
  const found = search(openWorkshop(olderWorkshop()));
  expect(found({}, 'name', 'leabes')).toEqual(['Rust leaves']);
});

test('changes made before the migration, when undone and redone, are followed by the filters', () => {
  const workshop = openWorkshop(olderWorkshop());
  const found = search(workshop);
  workshop.get('change:undo', {});
  expect(found({ kind: 'yardage' })).toEqual(['Rust leaves']);
  workshop.get('change:redo', {});
  expect(found({ freeAtLeast: inches(60) })).toEqual(['Blue dots']);
});

test('bookings made after the migration are followed by the filters', () => {
  const workshop = openWorkshop(olderWorkshop());
  const found = search(workshop);
  workshop.get('ledger:count', {
    pieceId: id('c2') as never,
    there: inches(0),
    on: TODAY,
    note: '',
  });
  expect(found({ kind: 'fat-quarter' })).toEqual([]);
  expect(found({}, 'most-free')).toEqual(['Blue dots', 'Rust leaves']);
});

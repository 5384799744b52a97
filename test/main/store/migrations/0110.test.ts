import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const id = (last: string) => `00000000-0000-4000-8000-0000000000${last}`;

test('the first-in cost of older bookings is worked out when needed, and stored from the next booking on', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(100, file);
  older.exec(`
    INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '${id('aa')}', 'Began it', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO project (seq, id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived, created_at, changed_at)
      VALUES (1, '${id('a1')}', 'Old ring', 'own', '', '{"shape":"circle","diameter":406400}', 0, '{}', '', 0, 1, 1);
    INSERT INTO fabric (seq, id, name, print, color_words, fiber, direction, width, is_washed, supplier, swatch, notes, created_at)
      VALUES (1, '${id('f1')}', 'Rust', '', '', '', 'any', 341376, 0, '', '#a0522d', '', 1);
    INSERT INTO cloth_piece (seq, id, fabric_seq, kind, width) VALUES (1, '${id('c1')}', 1, 'yardage', 341376);
    INSERT INTO booking (seq, id, fabric_seq, project_seq, note, on_date, recorded_at) VALUES
      (1, '${id('b1')}', 1, NULL, '', '2027-01-01', 1), (2, '${id('b2')}', 1, 1, '', '2027-01-02', 2);
    INSERT INTO ledger_entry (id, booking_seq, piece_seq, kind, length_change, held_change, value_change) VALUES
      ('${id('e1')}', 1, 1, 'bought', 4000, 0, 1000), ('${id('e2')}', 2, 1, 'cut', -1000, 0, -250);
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  const { context, get } = openWorkshop(file);
  const kept = () => context.store.database.prepare('SELECT first_in_minor FROM project_use').pluck().all();
  const cost = () => get('ledger:of-project', { projectId: id('a1') as never }).cost;
  expect(kept()).toEqual([null]);
  expect(cost()).toEqual({ firstIn: { minor: 250, unpricedArea: 0 }, replacementMinor: 250 });
  get('ledger:cut', {
    pieceId: id('c1') as never,
    projectId: id('a1') as never,
    stageId: null,
    length: 1_000 as never,
    leftovers: [],
    knowingly: false,
    on: '2027-01-03' as never,
    note: '',
  });
  expect(kept()).toEqual([500]);
  expect(cost()).toEqual({ firstIn: { minor: 500, unpricedArea: 0 }, replacementMinor: 500 });
});

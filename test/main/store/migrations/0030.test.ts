import path from 'node:path';
import { expect, test } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import { createStoreAt, inches, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const ON = calendarDate('2027-03-01');
const [FABRIC, PROJECT, PIECE] = ['1', '2', '3'].map(
  (digit) => `${digit}0000000-0000-4000-8000-000000000000`,
);

/** A file of the version before: a piece of 72 in, cut to 52 in although 60 in are set aside. */
function overbookedFile(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const database = createStoreAt(20, file);
  const booking = (seq: number, project: string) =>
    `INSERT INTO booking (seq, id, fabric_seq, project_seq, note, on_date, recorded_at)
    VALUES (${String(seq)}, 'booking ${String(seq)}', 1, ${project}, '', '2027-02-28', 0);`;
  const entry = (seq: number, kind: string, length: number, held: number, value: number) =>
    `INSERT INTO ledger_entry (id, booking_seq, piece_seq, kind, length_change, held_change, value_change)
    VALUES ('entry ${String(seq)}', ${String(seq)}, 1, '${kind}', ${String(length)}, ${String(held)}, ${String(value)});`;
  database.exec(`
    INSERT INTO change_log VALUES (1, 'change', 'Cut “Rust leaves”', 0, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO project (id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived, created_at, changed_at)
      VALUES ('${PROJECT ?? ''}', 'Autumn ring', 'own', '', '{"shape":"circle","diameter":406400}', 0, '{}', '', 0, 0, 0);
    INSERT INTO fabric (id, name, print, color_words, fiber, direction, width, is_washed, supplier, place, swatch, notes, created_at)
      VALUES ('${FABRIC ?? ''}', 'Rust leaves', '', '', '', 'any', ${String(inches(42))}, 0, '', '', '#a0522d', '', 0);
    DELETE FROM change_row;
    INSERT INTO cloth_piece (id, fabric_seq, kind, width) VALUES ('${PIECE ?? ''}', 1, 'yardage', ${String(inches(42))});
    ${booking(1, 'NULL')} ${entry(1, 'bought', inches(72), 0, 2_000)}
    ${booking(2, '1')} ${entry(2, 'set-aside', 0, inches(60), 0)}
    ${booking(3, 'NULL')} ${entry(3, 'cut', 0 - inches(20), 0, -555)}
    INSERT INTO change_booking VALUES (1, 3);
    UPDATE current_change SET change_seq = NULL;`);
  database.close();
  return file;
}

test('older bookings count as made knowingly, so that they can be undone and redone', () => {
  const workshop = openWorkshop(overbookedFile());
  const piece = () => workshop.get('fabric:open', { fabricId: FABRIC as never }).pieces[0];
  expect(piece()).toMatchObject({ there: inches(52), held: inches(60), valueMinor: 1_445 });
  workshop.get('change:undo', {});
  expect(piece()).toMatchObject({ there: inches(72), held: inches(60) });
  workshop.get('change:redo', {});
  expect(piece()).toMatchObject({ there: inches(52), held: inches(60) });
});

test('new bookings make a shortage larger only knowingly', () => {
  const workshop = openWorkshop(overbookedFile());
  const more = { pieceId: PIECE as never, projectId: PROJECT as never, length: inches(1), on: ON, note: '' };
  expect(workshop.fail('ledger:set-aside', more)).toMatchObject({ code: 'short-of-fabric' });
  workshop.get('ledger:set-aside', { ...more, knowingly: true });
  const knowing = workshop.context.store.database
    .prepare('SELECT is_knowing FROM booking ORDER BY seq')
    .pluck();
  expect(knowing.all()).toEqual([1, 1, 1, 1]);
});

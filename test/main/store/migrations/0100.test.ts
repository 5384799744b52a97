import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, openWorkshop, temporaryFolder, TODAY } from '#test/helpers/workshop';

const FABRIC = '00000000-0000-4000-8000-0000000000f1';
const PIECE = '00000000-0000-4000-8000-0000000000c1';

/** A workshop of the version before, with a purchase. */
function olderWorkshop(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(90, file);
  older.exec(`
    INSERT INTO change_log (id, words, made_at, is_undone) VALUES ('00000000-0000-4000-8000-0000000000aa', 'Added it', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO fabric (id, name, print, color_words, fiber, direction, width, is_washed, supplier, swatch, notes, created_at)
      VALUES ('${FABRIC}', 'Rust leaves', '', '', '', 'one-way', 341376, 1, '', '#a0522d', '', 1);
    INSERT INTO cloth_piece (id, fabric_seq, kind, width) VALUES ('${PIECE}', 1, 'yardage', 341376);
    INSERT INTO booking (id, fabric_seq, note, on_date, recorded_at) VALUES ('b', 1, '', '${TODAY}', 1);
    INSERT INTO ledger_entry (id, booking_seq, piece_seq, kind, length_change, held_change, value_change)
      VALUES ('e', 1, 1, 'bought', 292608, 0, 1000);
    INSERT INTO change_booking VALUES (1, 1);
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  return file;
}

test('older pieces have their print along the length; setting it across can be undone', () => {
  const workshop = openWorkshop(olderWorkshop());
  const runs = () => workshop.get('fabric:open', { fabricId: FABRIC as never }).pieces[0]?.printRuns;
  expect(runs()).toBe('along');
  workshop.get('piece:set-print', { pieceId: PIECE as never, runs: 'across' });
  expect(runs()).toBe('across');
  workshop.get('change:undo', {});
  expect(runs()).toBe('along');
});

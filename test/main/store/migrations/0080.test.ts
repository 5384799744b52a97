import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, inches, openWorkshop, temporaryFolder, TODAY } from '#test/helpers/workshop';

const FABRIC = '00000000-0000-4000-8000-0000000000f1';
const PIECE = '00000000-0000-4000-8000-0000000000c1';

/** A workshop of the version before: a fabric moved from the attic to a shelf, with a purchase. */
function olderWorkshop(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(70, file);
  older.exec(`
    INSERT INTO change_log (id, words, made_at, is_undone) VALUES ('00000000-0000-4000-8000-0000000000aa', 'Added it', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO fabric (id, name, print, color_words, fiber, direction, width, is_washed, supplier, place, swatch, notes, created_at)
      VALUES ('${FABRIC}', 'Rust leaves', '', '', '', 'any', 341376, 1, '', 'Attic', '#a0522d', '', 1);
    INSERT INTO cloth_piece (id, fabric_seq, kind, width) VALUES ('${PIECE}', 1, 'yardage', 341376);
    INSERT INTO booking (id, fabric_seq, note, on_date, recorded_at) VALUES ('b', 1, '', '${TODAY}', 1);
    INSERT INTO ledger_entry (id, booking_seq, piece_seq, kind, length_change, held_change, value_change)
      VALUES ('e', 1, 1, 'bought', 292608, 0, 1000);
    INSERT INTO change_booking VALUES (1, 1);
    INSERT INTO change_log (id, words, made_at, is_undone) VALUES ('00000000-0000-4000-8000-0000000000ab', 'Moved it', 2, 0);
    UPDATE current_change SET change_seq = 2;
    UPDATE fabric SET place = 'Sewing room, shelf 2';
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  return file;
}

test('places in words become places in the tree, one level for each part, and are found as before', () => {
  const workshop = openWorkshop(olderWorkshop());
  const { fabric, pieces } = workshop.get('fabric:open', { fabricId: FABRIC as never });
  expect(fabric.place).toBe('Sewing room, shelf 2');
  expect(pieces).toMatchObject([
    { id: PIECE, kind: 'yardage', kindId: null, unitLength: null, there: inches(36) },
  ]);
  expect(workshop.get('place:list', {}).map(({ path: at, fabrics }) => [at, fabrics])).toEqual([
    ['Attic', 0],
    ['Sewing room', 0],
    ['Sewing room, shelf 2', 1],
  ]);
  expect(workshop.get('fabric:list', { search: 'sewing shelf' }).total).toBe(1);
  expect(workshop.get('fabric:list', { search: 'attic' }).total).toBe(0);
});

test('changes made before the migration can still be undone and redone', () => {
  const workshop = openWorkshop(olderWorkshop());
  const place = () => workshop.get('fabric:open', { fabricId: FABRIC as never }).fabric.place;
  workshop.get('change:undo', {});
  expect(place()).toBe('Attic');
  workshop.get('change:redo', {});
  expect(place()).toBe('Sewing room, shelf 2');
});

test('pieces take the new kinds, and still cannot be edited', () => {
  const { context } = openWorkshop(olderWorkshop());
  const run = (sql: string) => () => context.store.database.exec(sql);
  expect(
    run(`INSERT INTO fabric_piece (id, fabric_seq, kind, width) VALUES ('t', 1, 'thread', 320)`),
  ).not.toThrow();
  expect(
    run(`INSERT INTO fabric_piece (id, fabric_seq, kind, width) VALUES ('u', 1, 'string', 320)`),
  ).toThrow();
  expect(run(`UPDATE fabric_piece SET width = 1`)).toThrow('The ledger is never edited');
  expect(run(`DELETE FROM fabric_piece`)).toThrow('The ledger is never edited');
});

import path from 'node:path';
import { expect, test } from 'vitest';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { createStoreAt, inches, openWorkshop, temporaryFolder, TODAY } from '#test/helpers/workshop';

const id = (last: string) => `00000000-0000-4000-8000-0000000000${last}`;

/**
 * A fabric 10 in wide bought twice: piece 1 of 10 in without a cost, piece 2 of 10 in for 1 cent. Of each 4 in were cut for a project and
 * 1 in of that kept, pieces 3 and 4; of piece 1, 2 in are set aside.
 */
const OLD_LEDGER = `
  INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '${id('aa')}', 'Began it', 1, 0);
  UPDATE current_change SET change_seq = 1;
  INSERT INTO project (seq, id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived, created_at, changed_at)
    VALUES (1, '${id('a1')}', 'Old ring', 'own', '', '{"shape":"circle","diameter":406400}', 0, '{}', '', 0, 1, 1);
  INSERT INTO fabric (seq, id, name, print, color_words, fiber, direction, width, is_washed, supplier, swatch, notes, created_at)
    VALUES (1, '${id('f1')}', 'Old', '', '', '', 'any', ${inches(10)}, 0, '', '#a0522d', '', 1);
  INSERT INTO fabric_piece (seq, id, fabric_seq, kind, width) VALUES
    (1, '${id('c1')}', 1, 'yardage', ${inches(10)}), (2, '${id('c2')}', 1, 'yardage', ${inches(10)}),
    (3, '${id('c3')}', 1, 'leftover', ${inches(10)}), (4, '${id('c4')}', 1, 'leftover', ${inches(10)});
  INSERT INTO booking (seq, id, fabric_seq, project_seq, note, on_date, recorded_at) VALUES
    (1, '${id('b1')}', 1, NULL, '', '2027-01-01', 1), (2, '${id('b2')}', 1, NULL, '', '2027-01-01', 1),
    (3, '${id('b3')}', 1, 1, '', '2027-01-02', 1), (4, '${id('b4')}', 1, 1, '', '2027-01-02', 1),
    (5, '${id('b5')}', 1, 1, '', '2027-01-02', 1);
  INSERT INTO ledger_entry (id, booking_seq, piece_seq, kind, length_change, held_change, value_change) VALUES
    ('${id('e1')}', 1, 1, 'bought', ${inches(10)}, 0, 0), ('${id('e2')}', 2, 2, 'bought', ${inches(10)}, 0, 1),
    ('${id('e3')}', 3, 1, 'cut', -${inches(4)}, 0, 0), ('${id('e4')}', 3, 3, 'leftover', ${inches(1)}, 0, 0),
    ('${id('e5')}', 4, 2, 'cut', -${inches(4)}, 0, 0), ('${id('e6')}', 4, 4, 'leftover', ${inches(1)}, 0, 0),
    ('${id('e7')}', 5, 1, 'set-aside', 0, ${inches(2)}, 0);
  UPDATE current_change SET change_seq = NULL;
`;

test('a cost of 0 from before is not known, in leftovers and projects too; worth 0 by rounding stays', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(200, file);
  older.exec(OLD_LEDGER);
  older.close();
  const { context, get } = openWorkshop(file);
  const all = (sql: string) => context.store.database.prepare(sql).raw().all();
  expect(all('SELECT piece_seq, value_minor, held FROM piece_sum ORDER BY 1')).toEqual([
    [1, null, inches(2)],
    [2, 1, 0],
    [3, null, 0],
    [4, 0, 0],
  ]);
  const projectId = id('a1') as ProjectId;
  const square = inches(10) * inches(1);
  const used = { minor: 0, unpricedArea: 3 * square };
  expect(get('ledger:of-project', { projectId })).toMatchObject({ paid: used, usedArea: 6 * square });
  expect(get('stash:numbers', {}).value).toEqual({ minor: 1, unpricedArea: 7 * square });
  // The ledger goes on from there: both kinds of piece can be cut, and the cuts be undone.
  for (const piece of ['c1', 'c2', 'c3', 'c4']) {
    get('ledger:cut', {
      ...{ pieceId: id(piece) as FabricPieceId, projectId, stageId: null, length: inches(1) },
      ...{ leftovers: [], knowingly: true, on: TODAY, note: '' },
    });
  }
  expect(get('ledger:of-project', { projectId }).paid.unpricedArea).toBe(5 * square);
  for (let undone = 0; undone < 4; undone += 1) get('change:undo', {});
  expect(get('ledger:of-project', { projectId }).paid).toEqual(used);
});

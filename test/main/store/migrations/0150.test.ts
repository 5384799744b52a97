import path from 'node:path';
import { expect, test } from 'vitest';
import { startOldRing, OLD_STAGE } from '#test/helpers/older-stores';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('older log entries with a count give the same rates as before', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(140, file);
  startOldRing(older, 'Wrote down time');
  older.exec(`
    INSERT INTO work (id, stage_id, on_day, minutes, done_what, done_amount, note) VALUES
      ('00000000-0000-4000-8000-0000000000c1', '${OLD_STAGE}', '2027-01-01', 60, 'blocks', 10, ''),
      ('00000000-0000-4000-8000-0000000000c2', '${OLD_STAGE}', '2027-01-02', 45, NULL, NULL, '');
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  expect(openWorkshop(file).get('work:counted', {})).toEqual([
    { minutes: 60, done: { what: 'blocks', amount: 10 } },
  ]);
});

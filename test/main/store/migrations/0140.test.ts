import path from 'node:path';
import { expect, test } from 'vitest';
import { startOldRing, OLD_PROJECT } from '#test/helpers/older-stores';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('older estimates count as those of the stage plan, and a stage deleted before can be restored', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(130, file);
  startOldRing(older, 'Removed the stage');
  older.exec('DELETE FROM stage; UPDATE current_change SET change_seq = NULL');
  older.close();
  const workshop = openWorkshop(file);
  workshop.get('change:undo', {});
  expect(workshop.get('project:open', { projectId: OLD_PROJECT as never }).stages).toEqual([
    expect.objectContaining({ name: 'Piece', estimateMinutes: 30, isOwnEstimate: false }),
  ]);
});

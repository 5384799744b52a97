import path from 'node:path';
import { expect, test } from 'vitest';
import { beginOldRing, OLD_PROJECT } from '#test/helpers/older-stores';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('hours of stages from before count as those of the plan, and a stage removed before can be brought back', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(130, file);
  beginOldRing(older, 'Removed the stage');
  older.exec('DELETE FROM stage; UPDATE current_change SET change_seq = NULL');
  older.close();
  const workshop = openWorkshop(file);
  workshop.get('change:undo', {});
  expect(workshop.get('project:open', { projectId: OLD_PROJECT as never }).stages).toEqual([
    expect.objectContaining({ name: 'Piece', estimateMinutes: 30, isOwnEstimate: false }),
  ]);
});

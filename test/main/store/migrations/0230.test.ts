import path from 'node:path';
import { expect, test } from 'vitest';
import type { ProjectId } from '#core/domain/ids';
import { NO_PATTERN } from '#core/domain/pattern';
import { OLD_PROJECT, startOldRing } from '#test/helpers/older-stores';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('a project from before has no pattern, and can be given one', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(220, file);
  startOldRing(older, 'Started');
  older.exec('UPDATE current_change SET change_seq = NULL');
  older.close();
  const workshop = openWorkshop(file);
  const projectId = OLD_PROJECT as ProjectId;
  expect(workshop.get('pattern:open', { projectId })).toBeNull();
  const details = { ...NO_PATTERN, patternName: 'Lantern Street' };
  workshop.get('pattern:save', { projectId, details, answer: null });
  expect(workshop.get('pattern:open', { projectId })).toEqual({ ...details, file: null });
});

import path from 'node:path';
import { expect, test } from 'vitest';
import { addProject, createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('an older workshop keeps its data and can run the clock', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(50, file);
  older.exec(`
    INSERT INTO change_log (id, words, made_at, is_undone) VALUES ('00000000-0000-4000-8000-0000000000aa', 'Added a contact', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO contact (id, name, kind) VALUES ('00000000-0000-4000-8000-0000000000bb', 'Pell Tallowmere', 'longarm');
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  const workshop = openWorkshop(file);
  expect(workshop.get('contact:list', {}).map(({ details }) => details.name)).toEqual(['Pell Tallowmere']);
  const { stages } = addProject(workshop);
  workshop.get('clock:start', { stageId: stages[0]!.id });
  expect(workshop.get('clock:state', {})).toMatchObject({ stageId: stages[0]!.id });
});

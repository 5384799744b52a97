import path from 'node:path';
import { expect, test } from 'vitest';
import { addProject, createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('an older workshop has an empty shopping list, and a line added to it can be undone', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  createStoreAt(120, file).close();
  const workshop = openWorkshop(file);
  const { projectId } = addProject(workshop);
  const details = { words: 'Thread', howMuch: '2 spools', supplier: '', projectId };
  workshop.get('shopping:save-line', { lineId: null, details });
  expect(workshop.get('shopping:list', {}).own).toMatchObject([{ ...details, projectName: 'Autumn ring' }]);
  workshop.get('change:undo', {});
  expect(workshop.get('shopping:list', {}).own).toEqual([]);
});

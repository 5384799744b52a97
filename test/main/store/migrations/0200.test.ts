import path from 'node:path';
import { expect, test } from 'vitest';
import { OLD_PROJECT, startOldRing } from '#test/helpers/older-stores';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('a cutting plan saved before has set nothing aside, and can be deleted', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(190, file);
  startOldRing(older, 'Started');
  const setup = {
    projects: [OLD_PROJECT],
    taken: [],
    lines: [],
    fabricChoices: [],
    leftOut: [],
    table: null,
  };
  const plan = { setup, rule: 'guillotine', pieces: [], purchases: [], unplaced: [], plannedWith: [] };
  older
    .prepare('INSERT INTO cutting_plan (id, project_id, plan_json, kept_at) VALUES (?, ?, ?, 1)')
    .run('00000000-0000-4000-8000-0000000000c1', OLD_PROJECT, JSON.stringify(plan));
  older.exec('UPDATE current_change SET change_seq = NULL');
  older.close();
  const { context } = openWorkshop(file);
  const holds = context.store.database.prepare('SELECT holds_json FROM cutting_plan').pluck().all();
  expect(holds).toEqual(['[]']);
});

import path from 'node:path';
import { expect, test } from 'vitest';
import { schemaSnapshot } from '#main/store/opening/schema-snapshot';
import { planOnTwoYards } from '#test/helpers/kept-plans';
import {
  addStock,
  addProject,
  createStoreAt,
  openWorkshop,
  temporaryFolder,
  TODAY,
} from '#test/helpers/workshop';

/** A workshop of the version before: a project with stages, and a fabric with a purchase. */
function fillBefore(file: string): void {
  const database = createStoreAt(30, file);
  database.exec(`
    INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, 'c', 'Laid out', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO project (id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived,
        created_at, changed_at)
      VALUES ('p', 'Old ring', 'own', '', '{}', 0, '{}', '', 0, 1, 1);
    INSERT INTO stage (id, project_id, position, kind, name, state, estimate_minutes, held_up_by, notes, gate_passed_why)
      VALUES ('s', 'p', 0, 'piecing', 'Piece the top', 'planned', 60, '', '', '');
    UPDATE current_change SET change_seq = NULL;
  `);
  database.close();
}

test('an older workshop keeps its data, and then saves cutting plans and their cuts', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  fillBefore(file);
  const workshop = openWorkshop(file);
  const { database } = workshop.context.store;
  expect(schemaSnapshot(database).version).toBeGreaterThanOrEqual(40);
  expect(database.prepare('SELECT name FROM project').all()).toEqual([{ name: 'Old ring' }]);
  expect(database.prepare('SELECT name FROM stage').all()).toEqual([{ name: 'Piece the top' }]);
  const { projectId, stages } = addProject(workshop);
  const cloth = addStock(workshop);
  const plan = planOnTwoYards({ projects: [projectId], stageId: stages[0]!.id, ...cloth });
  workshop.get('cutting:save', { projectId, plan });
  const at = { projectId, pieceId: cloth.pieceId, place: 0, on: TODAY };
  workshop.get('cutting:tick', { ...at, knowingly: false });
  expect(workshop.get('cutting:open', { projectId })?.ticked).toHaveLength(1);
});

import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const PROJECT = '00000000-0000-4000-8000-0000000000a1';

test('hours of stages from before count as those of the plan, and a stage removed before can be brought back', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(130, file);
  older.exec(`
    INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '00000000-0000-4000-8000-0000000000aa', 'Began it', 1, 0),
      (2, '00000000-0000-4000-8000-0000000000ab', 'Removed the stage', 2, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO project (id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived, created_at, changed_at)
      VALUES ('${PROJECT}', 'Old ring', 'own', '', '{"shape":"circle","diameter":406400}', 0, '{}', '', 0, 1, 1);
    INSERT INTO stage (id, project_id, position, kind, name, state, estimate_minutes, held_up_by, notes, gate_passed_why)
      VALUES ('00000000-0000-4000-8000-0000000000b1', '${PROJECT}', 0, 'piecing', 'Piece', 'planned', 30, '', 'By the window', '');
    UPDATE current_change SET change_seq = 2;
    DELETE FROM stage;
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  const workshop = openWorkshop(file);
  workshop.get('change:undo', {});
  expect(workshop.get('project:open', { projectId: PROJECT as never }).stages).toEqual([
    expect.objectContaining({ name: 'Piece', estimateMinutes: 30, isOwnEstimate: false }),
  ]);
});

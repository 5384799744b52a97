import type Database from 'better-sqlite3';

/** The only project of an older store, and its only stage. */
export const OLD_PROJECT = '00000000-0000-4000-8000-0000000000a1';
export const OLD_STAGE = '00000000-0000-4000-8000-0000000000b1';

/** Adds a project with a half-hour piecing stage as one change, and leaves a second change open for the test. */
export function startOldRing(store: Database.Database, secondChange: string): void {
  store.exec(`
    INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '00000000-0000-4000-8000-0000000000aa', 'Began it', 1, 0),
      (2, '00000000-0000-4000-8000-0000000000ab', '${secondChange}', 2, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO project (id, name, purpose, for_whom, outline_json, has_slit, habit_changes_json, notes, is_archived, created_at, changed_at)
      VALUES ('${OLD_PROJECT}', 'Old ring', 'own', '', '{"shape":"circle","diameter":406400}', 0, '{}', '', 0, 1, 1);
    INSERT INTO stage (id, project_id, position, kind, name, state, estimate_minutes, held_up_by, notes, gate_passed_why)
      VALUES ('${OLD_STAGE}', '${OLD_PROJECT}', 0, 'piecing', 'Piece', 'planned', 30, '', 'By the window', '');
    UPDATE current_change SET change_seq = 2;
  `);
}

import { type WritableStore, write, writeOne } from '../base/handles';

/**
 * Adds many fabrics or pieces at once: while `work` runs, the search and the shelf do not follow row by row; then they take in
 * all the fabrics `work` gives, in one step each. An exception leaves them waiting, but the transaction is rolled back with it.
 */
export function addMany(store: WritableStore, work: () => readonly number[]): void {
  writeOne(store, 'UPDATE search_state SET is_waiting = 1 WHERE is_waiting = 0');
  const seqs = JSON.stringify(work());
  const those = 'IN (SELECT value FROM json_each(?))';
  write(store, `DELETE FROM fabric_words WHERE rowid ${those}`, seqs);
  write(
    store,
    `INSERT INTO fabric_words (rowid, words) SELECT seq, words FROM fabric_said WHERE seq ${those}`,
    seqs,
  );
  write(store, `REPLACE INTO shelf SELECT * FROM shelf_line WHERE fabric_seq ${those}`, seqs);
  writeOne(store, 'UPDATE search_state SET is_waiting = 0, changes = changes + 1');
}

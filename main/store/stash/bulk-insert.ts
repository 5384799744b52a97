import { type WritableStore, write, writeOne } from '../base/handles';

/**
 * Adds many fabrics or pieces at once. The search and the shelf are not updated row by row while `work` runs; afterwards each takes all the
 * fabrics that `work` returns in one step. After an exception they stay switched off, but the transaction is rolled back.
 */
export function bulkInsert(store: WritableStore, work: () => readonly number[]): void {
  writeOne(store, 'UPDATE search_state SET is_waiting = 1 WHERE is_waiting = 0');
  const seqs = JSON.stringify(work());
  const listed = 'IN (SELECT value FROM json_each(?))';
  write(store, `DELETE FROM fabric_words WHERE rowid ${listed}`, seqs);
  write(
    store,
    `INSERT INTO fabric_words (rowid, words) SELECT seq, words FROM fabric_said WHERE seq ${listed}`,
    seqs,
  );
  write(store, `REPLACE INTO shelf SELECT * FROM shelf_line WHERE fabric_seq ${listed}`, seqs);
  writeOne(store, 'UPDATE search_state SET is_waiting = 0, changes = changes + 1');
}

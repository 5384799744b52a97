import { BOOKING_IS_ACTIVE } from '#main/store/ledger/ledger-sql';
import { UNDOABLE_TABLES } from '#main/store/history/undoable-tables';
import type { TestWorkshop } from './workshop';

/** Every row that undo puts back, and the sums of the ledger, as text. Rows marked as deleted are left out. */
export function dumpOf({ context }: TestWorkshop): string {
  const rows = (sql: string): readonly unknown[] => context.store.database.prepare(sql).all();
  const tables = UNDOABLE_TABLES.map((table) => {
    const isMarked = table === 'project' || table === 'fabric';
    return [table, rows(`SELECT * FROM ${table} ${isMarked ? 'WHERE deleted_at IS NULL' : ''} ORDER BY id`)];
  });
  return JSON.stringify(
    [
      ...tables,
      rows('SELECT * FROM piece_sum WHERE there > 0 OR held > 0 OR value_minor > 0 ORDER BY piece_seq'),
      rows('SELECT * FROM piece_hold WHERE held > 0 ORDER BY project_seq, piece_seq'),
      rows('SELECT * FROM project_use WHERE area <> 0 OR cost_minor <> 0 ORDER BY project_seq, fabric_seq'),
      rows(`SELECT count(*) AS active FROM booking WHERE takes_back IS NULL AND ${BOOKING_IS_ACTIVE}`),
      rows(`SELECT rowid FROM fabric_words WHERE fabric_words MATCH '"p"*' ORDER BY rowid`),
    ],
    null,
    1,
  );
}

import { UNDOABLE_TABLES } from '#main/store/history/undoable-tables';
import type { TestWorkshop } from './workshop';

/** Every row undo answers for, and the sums of the ledger, as text; what is marked as deleted is as good as gone. */
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
      rows(`SELECT count(*) AS standing FROM booking WHERE takes_back IS NULL
        AND NOT EXISTS (SELECT 1 FROM booking AS later WHERE later.takes_back = booking.seq)`),
      rows(`SELECT rowid FROM fabric_words WHERE fabric_words MATCH '"p"*' ORDER BY rowid`),
    ],
    null,
    1,
  );
}

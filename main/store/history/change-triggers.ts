import type Database from 'better-sqlite3';
import { UNDOABLE_TABLES, type UndoableTable } from './undoable-tables';

/**
 * Gives every undoable table the triggers that store a row before and after a change as JSON. They name the columns the table has now,
 * so they are installed again after every migration. A write outside a change is refused.
 */
export function installChangeTriggers(database: Database.Database): void {
  for (const table of UNDOABLE_TABLES) {
    const columns = database
      .prepare<[string], { name: string }>('SELECT name FROM pragma_table_info(?)')
      .all(table);
    // This version of the format does not have the table yet.
    if (columns.length === 0) continue;
    for (const sql of triggersOf(
      table,
      columns.map(({ name }) => name),
    ))
      database.exec(sql);
  }
}

function triggersOf(table: UndoableTable, columns: readonly string[]): readonly string[] {
  const [before, after] = [rowJson('OLD', columns), rowJson('NEW', columns)];
  return [
    ...trigger(table, { event: 'insert', when: '', id: 'NEW.id', before: 'NULL', after }),
    ...trigger(table, {
      event: 'update',
      when: `WHEN ${before} IS NOT ${after}`,
      id: 'OLD.id',
      before,
      after,
    }),
    ...trigger(table, { event: 'delete', when: '', id: 'OLD.id', before, after: 'NULL' }),
  ];
}

/** One trigger, in SQL: when it runs, the id of the row, and the row before and after as JSON. */
interface ChangeTrigger {
  readonly event: 'insert' | 'update' | 'delete';
  readonly when: string;
  readonly id: string;
  readonly before: string;
  readonly after: string;
}

function trigger(table: string, { event, when, id, before, after }: ChangeTrigger): readonly string[] {
  const name = `${table}_change_${event}`;
  return [
    `DROP TRIGGER IF EXISTS ${name}`,
    `CREATE TRIGGER ${name} AFTER ${event.toUpperCase()} ON ${table} ${when} BEGIN
  SELECT RAISE(ABORT, 'Outside a change') FROM current_change WHERE change_seq IS NULL;
  INSERT INTO change_row (change_seq, table_name, row_id, before_json, after_json)
    SELECT change_seq, '${table}', ${id}, ${before}, ${after} FROM current_change;
END`,
  ];
}

function rowJson(row: 'OLD' | 'NEW', columns: readonly string[]): string {
  return `json_object(${columns.map((name) => `'${name}', ${row}.${name}`).join(', ')})`;
}

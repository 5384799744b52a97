import {
  allRows,
  insertRow,
  oneRow,
  type Row,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from '../base/handles';
import { jsonOf, textOf } from '../base/rows';
import { BOOKED_TABLES, UNDOABLE_TABLES, type UndoableTable } from './undoable-tables';

/**
 * Puts every row of a change back as it was before, the last first. The triggers record this under the same change, so flipping it
 * again is redo.
 */
export function flipRows(store: WritableStore, changeSeq: number): void {
  const rows = allRows(store, 'SELECT * FROM change_row WHERE change_seq = ? ORDER BY seq DESC', changeSeq);
  write(store, 'DELETE FROM change_row WHERE change_seq = ?', changeSeq);
  for (const row of rows) flipRow(store, row);
}

function flipRow(store: WritableStore, row: Row): void {
  const table = undoableTable(textOf(row, 'table_name'));
  const id = textOf(row, 'row_id');
  if (row['before_json'] === null) removeRow(store, table, id);
  else putRow(store, table, id, jsonOf(row, 'before_json') as Readonly<Record<string, Value>>);
}

/** Removes a row, or marks it as deleted if bookings refer to it. A row that was removed with its parent is gone already. */
export function removeRow(store: WritableStore, table: UndoableTable, id: string): void {
  const column = BOOKED_TABLES[table];
  const isBooked =
    column !== undefined &&
    oneRow(
      store,
      `SELECT 1 AS booked FROM booking WHERE ${column} = (SELECT seq FROM ${table} WHERE id = ?) LIMIT 1`,
      id,
    ) !== undefined;
  if (isBooked) updateRow(store, table, id, { deleted_at: store.clockAndIds.now() });
  else write(store, `DELETE FROM ${table} WHERE id = ?`, id);
}

function putRow(
  store: WritableStore,
  table: UndoableTable,
  id: string,
  columns: Readonly<Record<string, Value>>,
): void {
  const exists = oneRow(store, `SELECT 1 AS found FROM ${table} WHERE id = ?`, id) !== undefined;
  if (exists) updateRow(store, table, id, columns);
  else insertRow(store, table, columns);
}

function undoableTable(name: string): UndoableTable {
  const table = UNDOABLE_TABLES.find((one) => one === name);
  if (table === undefined) throw new Error(`Not an undoable table: ${name}`);
  return table;
}

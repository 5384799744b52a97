import type Database from 'better-sqlite3';
import type { ClockAndIds } from './clock-and-ids';

declare const mayRead: unique symbol;
declare const mayWrite: unique symbol;

/** A value SQLite accepts as a parameter. */
export type Value = string | number | Uint8Array | null;
/** A row as SQLite returns it, not checked yet. */
export type Row = Readonly<Record<string, unknown>>;

type Statement = Database.Statement<unknown[], Row>;

/** An open workshop that can be read. */
export interface ReadableStore {
  readonly [mayRead]: true;
  readonly database: Database.Database;
  readonly clockAndIds: ClockAndIds;
  readonly statements: Map<string, Statement>;
}

/** A workshop inside a write transaction. Only `writeTransaction` gives one out. */
export interface WritableStore extends ReadableStore {
  readonly [mayWrite]: true;
}

export function readableStore(database: Database.Database, clockAndIds: ClockAndIds): ReadableStore {
  return { database, clockAndIds, statements: new Map() } as unknown as ReadableStore;
}

/**
 * Runs `work` in one transaction that holds the write lock from its start. It is rolled back after an exception, and when `keep` is
 * false for the answer.
 */
export function writeTransaction<Answer>(
  store: ReadableStore,
  work: (store: WritableStore) => Answer,
  keep: (answer: Answer) => boolean = () => true,
): Answer {
  const { database } = store;
  database.exec('BEGIN IMMEDIATE');
  try {
    const answer = work(store as WritableStore);
    database.exec(keep(answer) ? 'COMMIT' : 'ROLLBACK');
    return answer;
  } catch (error) {
    if (database.inTransaction) database.exec('ROLLBACK');
    throw error;
  }
}

/** Runs several reads that all see the same state of the file. */
export function readTransaction<Answer>(store: ReadableStore, work: () => Answer): Answer {
  if (store.database.inTransaction) return work();
  store.database.exec('BEGIN');
  try {
    return work();
  } finally {
    store.database.exec('COMMIT');
  }
}

export function allRows(store: ReadableStore, sql: string, ...values: readonly Value[]): readonly Row[] {
  return prepared(store, sql).all(...values);
}

export function oneRow(store: ReadableStore, sql: string, ...values: readonly Value[]): Row | undefined {
  return prepared(store, sql).get(...values);
}

/** The single number that a query returns; throws if it returns anything else. */
export function oneNumber(store: ReadableStore, sql: string, ...values: readonly Value[]): number {
  const [value] = Object.values(oneRow(store, sql, ...values) ?? {});
  if (typeof value !== 'number') throw new Error(`No number from: ${sql}`);
  return value;
}

/** Runs a statement that writes; returns the number of rows changed. */
export function write(store: WritableStore, sql: string, ...values: readonly Value[]): number {
  return prepared(store, sql).run(...values).changes;
}

/** Runs a statement that must change exactly one row. Anything else is a bug and rolls the change back. */
export function writeOne(store: WritableStore, sql: string, ...values: readonly Value[]): void {
  const changes = write(store, sql, ...values);
  if (changes !== 1) throw new Error(`${changes} rows instead of one: ${sql}`);
}

/** Inserts one row and returns its rowid. Table and column names come from code, never from input. */
export function insertRow(
  store: WritableStore,
  table: string,
  columns: Readonly<Record<string, Value>>,
): number {
  const names = Object.keys(columns);
  const sql = `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})`;
  return Number(prepared(store, sql).run(...Object.values(columns)).lastInsertRowid);
}

/** Rows in one statement: its text stays far below SQLite's limit. */
const ROWS_AT_ONCE = 1_000;

/**
 * Inserts rows in their order, many in one statement, which takes a third less time than one by one. Text, whole numbers and nulls
 * are stored as `insertRow` stores them.
 */
export function insertRows(
  store: WritableStore,
  table: string,
  columns: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
): void {
  const values = columns.map((_name, index) => `value ->> ${String(index)}`);
  const sql = `INSERT INTO ${table} (${columns.join(', ')}) SELECT ${values.join(', ')} FROM json_each(?)`;
  for (let first = 0; first < rows.length; first += ROWS_AT_ONCE) {
    const some = rows.slice(first, first + ROWS_AT_ONCE);
    const json = JSON.stringify(some);
    write(store, sql, LONE_SURROGATE.test(json) ? JSON.stringify(some.map(wellFormed)) : json);
  }
}

/** JSON escapes half of a surrogate pair, and SQLite refuses the escape. */
const LONE_SURROGATE = /\\ud[89a-f]/;

function wellFormed(row: readonly (string | number | null)[]): readonly (string | number | null)[] {
  return row.map((value) => (typeof value === 'string' ? value.toWellFormed() : value));
}

/** The `seq` that the next row of a table gets. */
export function nextSeq(store: WritableStore, table: string): number {
  return oneNumber(store, `SELECT coalesce(max(seq), 0) + 1 FROM ${table}`);
}

/** Sets columns of the one row with this id. */
export function updateRow(
  store: WritableStore,
  table: string,
  id: string,
  columns: Readonly<Record<string, Value>>,
): void {
  const set = Object.keys(columns).map((name) => `${name} = ?`);
  writeOne(store, `UPDATE ${table} SET ${set.join(', ')} WHERE id = ?`, ...Object.values(columns), id);
}

function prepared(store: ReadableStore, sql: string): Statement {
  const cached = store.statements.get(sql);
  if (cached !== undefined) return cached;
  const statement = store.database.prepare<unknown[], Row>(sql);
  store.statements.set(sql, statement);
  return statement;
}

import type Database from 'better-sqlite3';
import type { ClockAndIds } from './clock-and-ids';

declare const mayRead: unique symbol;
declare const mayWrite: unique symbol;

/** What SQLite takes as a parameter. */
export type Value = string | number | Uint8Array | null;
/** A row as SQLite hands it over, before its area has looked at it. */
export type Row = Readonly<Record<string, unknown>>;

type Statement = Database.Statement<unknown[], Row>;

/** An open workshop that may be asked. */
export interface ReadableStore {
  readonly [mayRead]: true;
  readonly database: Database.Database;
  readonly surroundings: ClockAndIds;
  readonly statements: Map<string, Statement>;
}

/** A workshop inside a write transaction: only `writeTransaction` hands one out. */
export interface WritableStore extends ReadableStore {
  readonly [mayWrite]: true;
}

export function readableStore(database: Database.Database, surroundings: ClockAndIds): ReadableStore {
  return { database, surroundings, statements: new Map() } as unknown as ReadableStore;
}

/**
 * Runs `work` in one transaction that holds the write lock from its start. An exception, or an answer `keep` says no to,
 * leaves the file as it was.
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

/** Runs several reads on one state of the file. */
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

/** The single number a query gives; throws when it gives anything else. */
export function oneNumber(store: ReadableStore, sql: string, ...values: readonly Value[]): number {
  const [value] = Object.values(oneRow(store, sql, ...values) ?? {});
  if (typeof value !== 'number') throw new Error(`No number from: ${sql}`);
  return value;
}

/** Runs a statement that writes and gives how many rows it changed. */
export function write(store: WritableStore, sql: string, ...values: readonly Value[]): number {
  return prepared(store, sql).run(...values).changes;
}

/** Runs a statement that must change exactly one row; anything else is a bug and rolls the change back. */
export function writeOne(store: WritableStore, sql: string, ...values: readonly Value[]): void {
  const changes = write(store, sql, ...values);
  if (changes !== 1) throw new Error(`${changes} rows instead of one: ${sql}`);
}

/** Inserts one row from its columns and gives its rowid. Names come from code, never from input. */
export function insertRow(
  store: WritableStore,
  table: string,
  columns: Readonly<Record<string, Value>>,
): number {
  const names = Object.keys(columns);
  const sql = `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})`;
  return Number(prepared(store, sql).run(...Object.values(columns)).lastInsertRowid);
}

/** So many rows go into one statement; its text stays far below what SQLite takes. */
const ROWS_AT_ONCE = 1_000;

/**
 * Inserts rows in their order, many in one statement, which takes a third less time than one by one. Texts, whole numbers and nulls
 * arrive as `insertRow` stores them.
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
    write(store, sql, HALF_A_CHARACTER.test(json) ? JSON.stringify(some.map(wellFormed)) : json);
  }
}

/** JSON writes half of a character that takes two as its number; SQLite takes only whole ones. */
const HALF_A_CHARACTER = /\\ud[89a-f]/;

function wellFormed(row: readonly (string | number | null)[]): readonly (string | number | null)[] {
  return row.map((value) => (typeof value === 'string' ? value.toWellFormed() : value));
}

/** The number the next row of a table with a `seq` gets. */
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
  const known = store.statements.get(sql);
  if (known !== undefined) return known;
  const statement = store.database.prepare<unknown[], Row>(sql);
  store.statements.set(sql, statement);
  return statement;
}

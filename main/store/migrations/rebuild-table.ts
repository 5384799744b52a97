import type Database from 'better-sqlite3';

/**
 * Rebuilds a table with other SQL, which is how SQLite changes a CHECK. Rows keep the columns both shapes have; indexes and
 * triggers are created again. Foreign keys must be off, as they are during a migration.
 */
export function rebuildTable(database: Database.Database, table: string, createSql: string): void {
  const parts = database
    .prepare<[string], string>(
      `SELECT sql FROM sqlite_schema WHERE tbl_name = ? AND type IN ('index', 'trigger') AND sql IS NOT NULL`,
    )
    .pluck()
    .all(table);
  const before = columnsOf(database, table);
  // Other tables and triggers keep referring to the table by its name instead of following the renamed one.
  database.pragma('legacy_alter_table = ON');
  try {
    database.exec(`ALTER TABLE ${table} RENAME TO ${table}_before`);
    database.exec(createSql);
    const shared = columnsOf(database, table)
      .filter((column) => before.includes(column))
      .join(', ');
    database.exec(`INSERT INTO ${table} (${shared}) SELECT ${shared} FROM ${table}_before`);
    database.exec(`DROP TABLE ${table}_before`);
    for (const sql of parts) database.exec(sql);
  } finally {
    database.pragma('legacy_alter_table = OFF');
  }
}

function columnsOf(database: Database.Database, table: string): readonly string[] {
  return database.prepare<[string], string>('SELECT name FROM pragma_table_info(?)').pluck().all(table);
}

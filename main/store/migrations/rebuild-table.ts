import type Database from 'better-sqlite3';

/**
 * Makes a table anew in another shape, with the rows of the columns both shapes have, its indexes and its triggers: the
 * way to change a CHECK. Foreign keys are off during a migration, as this needs.
 */
export function rebuildTable(database: Database.Database, table: string, createSql: string): void {
  const parts = database
    .prepare<[string], string>(
      `SELECT sql FROM sqlite_schema WHERE tbl_name = ? AND type IN ('index', 'trigger') AND sql IS NOT NULL`,
    )
    .pluck()
    .all(table);
  const before = columnsOf(database, table);
  // Other tables and triggers go on naming it as they do, instead of following the old one.
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

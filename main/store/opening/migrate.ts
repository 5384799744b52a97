import type Database from 'better-sqlite3';
import { installChangeTriggers } from '../history/change-triggers';
import type { Migration } from '../migrations/migration';

export function storeVersion(database: Database.Database): number {
  return database.pragma('user_version', { simple: true }) as number;
}

/**
 * Applies every migration the file has not had yet, each in its own transaction, so that a crash leaves the file at a whole
 * version. Foreign keys are off while a table is rebuilt, and checked before each commit.
 */
export function migrate(database: Database.Database, migrations: readonly Migration[]): void {
  const due = migrations.filter(({ version }) => version > storeVersion(database));
  if (due.length === 0) return;
  database.pragma('foreign_keys = OFF');
  try {
    for (const migration of due) applyOne(database, migration);
  } finally {
    database.pragma('foreign_keys = ON');
  }
}

function applyOne(database: Database.Database, migration: Migration): void {
  database.exec('BEGIN IMMEDIATE');
  try {
    migration.apply(database);
    installChangeTriggers(database);
    const orphans = database.pragma('foreign_key_check') as readonly unknown[];
    if (orphans.length > 0)
      throw new Error(`Migration ${migration.version} leaves ${orphans.length} rows without their parent`);
    database.pragma(`user_version = ${migration.version}`);
    database.exec('COMMIT');
  } catch (error) {
    if (database.inTransaction) database.exec('ROLLBACK');
    throw error;
  }
}

import type Database from 'better-sqlite3';
import { installChangeTriggers } from '../history/change-triggers';
import type { Migration } from '../migrations/migration';

export function storeVersion(database: Database.Database): number {
  return database.pragma('user_version', { simple: true }) as number;
}

/**
 * Brings the file forward through every step it has not had, one transaction each: after a crash it stands at the last
 * whole step. Foreign keys are off meanwhile, as a rebuilt table needs, and checked before each commit.
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
    const loose = database.pragma('foreign_key_check') as readonly unknown[];
    if (loose.length > 0)
      throw new Error(`Step ${migration.version} leaves ${loose.length} rows without their parent`);
    database.pragma(`user_version = ${migration.version}`);
    database.exec('COMMIT');
  } catch (error) {
    if (database.inTransaction) database.exec('ROLLBACK');
    throw error;
  }
}

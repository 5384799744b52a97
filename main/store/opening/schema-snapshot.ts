import type Database from 'better-sqlite3';
import { storeVersion } from './migrate';

export interface SchemaSnapshot {
  readonly version: number;
  readonly objects: readonly { readonly type: string; readonly name: string; readonly sql: string }[];
}

/** The SQL of every table, index and trigger, by type and name. */
export function schemaSnapshot(database: Database.Database): SchemaSnapshot {
  const objects = database
    .prepare<[], SchemaSnapshot['objects'][number]>(
      `SELECT type, name, sql FROM sqlite_schema
      WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY type, name`,
    )
    .all();
  return { version: storeVersion(database), objects };
}

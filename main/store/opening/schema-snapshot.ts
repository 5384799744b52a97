import type Database from 'better-sqlite3';
import { storeVersion } from './migrate';

export interface SchemaSnapshot {
  readonly version: number;
  readonly objects: readonly { readonly type: string; readonly name: string; readonly sql: string }[];
}

/** The whole shape of a file: every table, index and trigger in its own words, by name. */
export function schemaSnapshot(database: Database.Database): SchemaSnapshot {
  const objects = database
    .prepare<[], SchemaSnapshot['objects'][number]>(
      `SELECT type, name, sql FROM sqlite_schema
      WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY type, name`,
    )
    .all();
  return { version: storeVersion(database), objects };
}

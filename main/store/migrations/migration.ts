import type Database from 'better-sqlite3';

/** One step of the file format. Once shipped it is never edited; a later migration corrects it. */
export interface Migration {
  /** The file's `user_version` after this migration. Steps of ten leave room. */
  readonly version: number;
  readonly says: string;
  /** Runs in one transaction with foreign keys off; they are checked before it commits. */
  readonly apply: (database: Database.Database) => void;
}

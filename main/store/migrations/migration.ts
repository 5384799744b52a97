import type Database from 'better-sqlite3';

/** One step of the file's format. Once it has shipped it is never edited: a later step mends it. */
export interface Migration {
  /** The `user_version` the file has after this step; steps of ten leave room. */
  readonly version: number;
  readonly says: string;
  /** Runs in one transaction with foreign keys off; they are checked before it commits. */
  readonly apply: (database: Database.Database) => void;
}

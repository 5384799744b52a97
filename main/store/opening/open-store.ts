import fs from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';
import { type ReadableStore, readableStore } from '../base/handles';
import { migrate, storeVersion } from './migrate';
import type { Migration } from '../migrations/migration';
import { NEWEST_VERSION, migrations } from '../migrations/migrations';
import type { ClockAndIds } from '../base/clock-and-ids';
import { APPLICATION_ID, inspectWorkshopFile, unreadable } from './workshop-file';

export interface OpenOptions {
  readonly clockAndIds: ClockAndIds;
  /** Called with the open file before anything in it changes; not called for a new file. */
  readonly backUp?: (database: Database.Database, why: 'start' | 'migration') => void;
  /** The migrations to apply; tests pass fewer or more. */
  readonly migrations?: readonly Migration[];
}

/**
 * Opens the workshop file or creates it. A newer file, or one from another program, is refused and left untouched. An existing file
 * is checked for damage, backed up and migrated.
 */
export function openStore(file: string, options: OpenOptions): Result<ReadableStore, Problem> {
  const steps = options.migrations ?? migrations;
  const newest = steps === migrations ? NEWEST_VERSION : Math.max(0, ...steps.map(({ version }) => version));
  const found = inspectWorkshopFile(file);
  if (!found.ok) return found;
  if (found.value !== null && found.value > newest) {
    return failure({ code: 'newer-workshop', found: found.value, newestSupported: newest });
  }
  let database: Database.Database | undefined;
  try {
    fs.mkdirSync(path.dirname(file), { recursive: true });
    database = new Database(file);
    setPragmas(database);
    if (found.value === null) database.pragma(`application_id = ${APPLICATION_ID}`);
    else {
      assertUndamaged(database);
      options.backUp?.(database, storeVersion(database) < newest ? 'migration' : 'start');
    }
    migrate(database, steps);
    return success(readableStore(database, options.clockAndIds));
  } catch (error) {
    database?.close();
    return failure(unreadable(error));
  }
}

/** Folds the write-ahead log into the file, as far as no reader blocks it. */
export function foldLog({ database }: ReadableStore): void {
  database.pragma('wal_checkpoint(PASSIVE)');
}

/** Folds the write-ahead log into the file and closes it. */
export function closeStore(store: ReadableStore): void {
  if (!store.database.open) return;
  store.database.pragma('wal_checkpoint(TRUNCATE)');
  store.database.close();
}

function setPragmas(database: Database.Database): void {
  database.pragma('busy_timeout = 5000');
  database.pragma('journal_mode = WAL');
  // A confirmed change survives a power cut.
  database.pragma('synchronous = FULL');
  // The log is folded into the file while the store is idle; until then it may grow to 64 MB.
  database.pragma('wal_autocheckpoint = 16000');
  database.pragma('foreign_keys = ON');
  database.pragma('recursive_triggers = ON');
  database.pragma('cache_size = -32768');
  database.pragma('temp_store = MEMORY');
}

function assertUndamaged(database: Database.Database): void {
  const verdict = database.pragma('quick_check(1)', { simple: true });
  if (verdict !== 'ok') throw new Error(`The file is damaged: ${String(verdict)}`);
}

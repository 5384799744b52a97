import fs from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';
import { type ReadableStore, readableStore } from '../base/handles';
import { migrate, storeVersion } from './migrate';
import type { Migration } from '../migrations/migration';
import { KNOWN_VERSION, migrations } from '../migrations/migrations';
import type { ClockAndIds } from '../base/clock-and-ids';
import { APPLICATION_ID, inspectWorkshopFile, unreadable } from './workshop-file';

export interface OpenOptions {
  readonly surroundings: ClockAndIds;
  /** Called with the open file before anything in it is changed; not for a new file. */
  readonly backUp?: (database: Database.Database, why: 'start' | 'migration') => void;
  /** The steps of the format; tests hand in fewer or more. */
  readonly steps?: readonly Migration[];
}

/**
 * Opens the workshop file, or makes it: refuses a newer one or another program's untouched, checks that it is whole,
 * backs it up, and brings it forward.
 */
export function openStore(file: string, options: OpenOptions): Result<ReadableStore, Problem> {
  const { steps = migrations } = options;
  const known = steps === migrations ? KNOWN_VERSION : Math.max(0, ...steps.map(({ version }) => version));
  const found = inspectWorkshopFile(file);
  if (!found.ok) return found;
  if (found.value !== null && found.value > known) {
    return failure({ code: 'newer-workshop', found: found.value, known });
  }
  let database: Database.Database | undefined;
  try {
    fs.mkdirSync(path.dirname(file), { recursive: true });
    database = new Database(file);
    setPragmas(database);
    if (found.value === null) database.pragma(`application_id = ${APPLICATION_ID}`);
    else {
      assertWhole(database);
      options.backUp?.(database, storeVersion(database) < known ? 'migration' : 'start');
    }
    migrate(database, steps);
    return success(readableStore(database, options.surroundings));
  } catch (error) {
    database?.close();
    return failure(unreadable(error));
  }
}

/** Folds the write-ahead log into the file, as far as nobody is in the way. */
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
  // A change that was acknowledged outlives a power cut.
  database.pragma('synchronous = FULL');
  // The log is folded into the file when the maker rests; in between it may grow to 64 MB.
  database.pragma('wal_autocheckpoint = 16000');
  database.pragma('foreign_keys = ON');
  database.pragma('recursive_triggers = ON');
  database.pragma('cache_size = -32768');
  database.pragma('temp_store = MEMORY');
}

function assertWhole(database: Database.Database): void {
  const said = database.pragma('quick_check(1)', { simple: true });
  if (said !== 'ok') throw new Error(`The file is damaged: ${String(said)}`);
}

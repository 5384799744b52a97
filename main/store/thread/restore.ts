import fs from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';
import { readBackupName } from '#main/files/backup-names';
import { makeBackup } from '#main/files/backups';
import { flush, moveWholeFile } from '#main/files/whole-file';
import type { StoreContext } from './store-context';
import { notFound } from '../base/lookups';
import { KNOWN_VERSION } from '../migrations/migrations';
import { closeStore, openStore } from '../opening/open-store';
import { inspectWorkshopFile } from '../opening/workshop-file';

/**
 * Puts a backup in the place of the open workshop. It is checked first, and what is there now is backed up; should the
 * restored file not open after all, that is put back. A refused backup changes nothing.
 */
export function restoreBackup(
  context: StoreContext,
  name: string,
): Result<{ readonly restored: string }, Problem> {
  const { file, backups } = context.folders;
  const backup = path.join(backups, name);
  if (readBackupName(name) === null || !fs.existsSync(backup)) return notFound('backup');
  const unusable = whyUnusable(backup);
  if (unusable !== null) return failure(unusable);

  const { surroundings, database } = context.store;
  const copy = copyBeside(file, backup);
  const safety = makeBackup(database, backups, 'restore', surroundings.now());
  const opened = swap(context, copy);
  if (opened.ok) return success({ restored: name });
  const putBack = swap(context, copyBeside(file, path.join(backups, safety.name)));
  return failure(putBack.ok ? { code: 'backup-unusable', detail: detailOf(opened.error) } : putBack.error);
}

function swap(context: StoreContext, copy: string): Result<null, Problem> {
  const { file, backups } = context.folders;
  const { surroundings } = context.store;
  closeStore(context.store);
  // The last to close the file removes these; what another process left there must not be read into the new file.
  for (const end of ['-wal', '-shm']) fs.rmSync(`${file}${end}`, { force: true });
  moveWholeFile(copy, file);
  const opened = openStore(file, {
    surroundings,
    backUp: (database, why) => {
      if (why === 'migration') makeBackup(database, backups, why, surroundings.now());
    },
  });
  if (!opened.ok) return opened;
  context.store = opened.value;
  return success(null);
}

function copyBeside(file: string, backup: string): string {
  const copy = `${file}.restoring`;
  fs.copyFileSync(backup, copy);
  flush(copy);
  return copy;
}

function whyUnusable(backup: string): Problem | null {
  const found = inspectWorkshopFile(backup);
  if (!found.ok) return { code: 'backup-unusable', detail: detailOf(found.error) };
  if (found.value === null) return { code: 'backup-unusable', detail: 'The backup is empty.' };
  if (found.value > KNOWN_VERSION)
    return { code: 'newer-workshop', found: found.value, known: KNOWN_VERSION };
  try {
    const database = new Database(backup, { readonly: true, fileMustExist: true });
    try {
      const said = database.pragma('integrity_check(1)', { simple: true });
      return said === 'ok' ? null : { code: 'backup-unusable', detail: String(said) };
    } finally {
      database.close();
    }
  } catch (error) {
    return { code: 'backup-unusable', detail: error instanceof Error ? error.message : String(error) };
  }
}

function detailOf(problem: Problem): string {
  return 'detail' in problem ? problem.detail : problem.code;
}

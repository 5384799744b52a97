import fs from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result, success } from '#core/result';
import { readBackupName } from '#main/files/backup-names';
import { makeBackup } from '#main/files/backups';
import { flush, moveWholeFile } from '#main/files/whole-file';
import type { BackupContext } from './backup-context';
import { notFound } from '../base/lookups';
import { NEWEST_VERSION } from '../migrations/migrations';
import { renewFileId } from '../opening/file-id';
import { closeStore, openStore } from '../opening/open-store';
import { inspectWorkshopFile } from '../opening/workshop-file';

/**
 * Replaces the open workshop with a backup. The backup is checked first, and the current workshop is backed up. If the restored
 * file does not open after all, the current workshop is put back. A refused backup changes nothing.
 */
export function restoreBackup(
  context: BackupContext,
  name: string,
): Result<{ readonly restored: string }, Problem> {
  const { file, backups } = context.folders;
  const backup = path.join(backups, name);
  if (readBackupName(name) === null || !fs.existsSync(backup)) return notFound('backup');
  const unusable = whyUnusable(backup);
  if (unusable !== null) return failure(unusable);

  const { clockAndIds, database } = context.store;
  const copy = copyBeside(file, backup);
  const safety = makeBackup(database, backups, 'restore', clockAndIds.now());
  const opened = swap(context, copy);
  if (opened.ok) {
    // A backup made before a restore is the workshop as it was then, drafts included.
    if (readBackupName(name)?.why !== 'restore') renewFileId(context.store);
    return success({ restored: name });
  }
  const putBack = swap(context, copyBeside(file, path.join(backups, safety.name)));
  return failure(putBack.ok ? { code: 'backup-unusable', detail: detailOf(opened.error) } : putBack.error);
}

function swap(context: BackupContext, copy: string): Result<null, Problem> {
  const { file, backups } = context.folders;
  const { clockAndIds } = context.store;
  closeStore(context.store);
  // SQLite would read a log left by another process into the new file.
  for (const end of ['-wal', '-shm']) fs.rmSync(`${file}${end}`, { force: true });
  moveWholeFile(copy, file);
  const opened = openStore(file, {
    clockAndIds,
    backUp: (database, why) => {
      if (why === 'migration') makeBackup(database, backups, why, clockAndIds.now());
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
  if (found.value > NEWEST_VERSION)
    return { code: 'newer-workshop', found: found.value, newestSupported: NEWEST_VERSION };
  try {
    const database = new Database(backup, { readonly: true, fileMustExist: true });
    try {
      const verdict = database.pragma('integrity_check(1)', { simple: true });
      return verdict === 'ok' ? null : { code: 'backup-unusable', detail: String(verdict) };
    } finally {
      database.close();
    }
  } catch (error) {
    return { code: 'backup-unusable', detail: messageOf(error) };
  }
}

function detailOf(problem: Problem): string {
  return 'detail' in problem ? problem.detail : problem.code;
}

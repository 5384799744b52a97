import fs from 'node:fs';
import path from 'node:path';
import type Database from 'better-sqlite3';
import type { Backup } from '#core/contract/workshop';
import { backupName, backupsToDelete, type BackupWhy, readBackupName } from './backup-names';
import { flush, moveWholeFile } from './whole-file';

/** The backups in a folder, newest first. */
export function listBackups(folder: string): readonly Backup[] {
  if (!fs.existsSync(folder)) return [];
  return fs
    .readdirSync(folder)
    .map(readBackupName)
    .filter((backup) => backup !== null)
    .map((backup) => ({ ...backup, bytes: fs.statSync(path.join(folder, backup.name)).size }))
    .sort((first, second) => second.madeAt - first.madeAt);
}

/** Writes a complete copy of an open workshop, then deletes backups that are no longer needed. */
export function makeBackup(database: Database.Database, folder: string, why: BackupWhy, now: number): Backup {
  fs.mkdirSync(folder, { recursive: true });
  const madeAt = freeInstant(folder, now);
  const name = backupName(madeAt, why);
  const scratch = path.join(folder, `.${name}.part`);
  try {
    fs.rmSync(scratch, { force: true });
    database.prepare('VACUUM INTO ?').run(scratch);
    flush(scratch);
    moveWholeFile(scratch, path.join(folder, name));
  } finally {
    fs.rmSync(scratch, { force: true });
  }
  deleteOldBackups(folder, madeAt);
  return { name, madeAt, why, bytes: fs.statSync(path.join(folder, name)).size };
}

function deleteOldBackups(folder: string, now: number): void {
  for (const name of backupsToDelete(fs.readdirSync(folder), now))
    fs.rmSync(path.join(folder, name), { force: true });
}

/** The first free millisecond, so that two backups never share a name. */
function freeInstant(folder: string, now: number): number {
  const taken = new Set(listBackups(folder).map(({ madeAt }) => madeAt));
  let instant = now;
  while (taken.has(instant)) instant += 1;
  return instant;
}

import { success } from '#core/result';
import { listBackups, makeBackup } from '#main/files/backups';
import type { Handlers } from '../base/handlers';
import type { BackupContext } from './backup-context';
import { restoreBackup } from './restore';

export const backupHandlers = {
  'backup:list': ({ folders }) => success(listBackups(folders.backups)),
  'backup:make': ({ store, folders }) =>
    success(makeBackup(store.database, folders.backups, 'by-hand', store.clockAndIds.now())),
  'backup:restore': (context, input) => restoreBackup(context, input.name),
} satisfies Handlers<'backup', BackupContext>;

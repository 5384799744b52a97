import type { Problem } from '#core/contract/problem';
import { type Result, success } from '#core/result';
import { makeBackup } from '#main/files/backups';
import { foldersOf } from '#main/files/workshop-folders';
import type { StoreContext } from './store-context';
import { openStore } from '../opening/open-store';
import type { StartOptions } from './protocol';
import { type ClockAndIds, systemClockAndIds } from '../base/clock-and-ids';

/** Opens a workshop with its folders. It is backed up at every start and before a migration. */
export function openContext(
  { file, programVersion, isDemo }: StartOptions,
  clockAndIds: ClockAndIds = systemClockAndIds(),
): Result<StoreContext, Problem> {
  const folders = foldersOf(file);
  const opened = openStore(file, {
    clockAndIds,
    backUp: (database, why) => makeBackup(database, folders.backups, why, clockAndIds.now()),
  });
  return opened.ok
    ? success({ store: opened.value, folders, programVersion, isDemo, tables: new Map(), lastTable: null })
    : opened;
}

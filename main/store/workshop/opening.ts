import type { ChannelOutput } from '#core/contract/channels';
import type { WorkshopFolders } from '#main/files/workshop-folders';
import { oneRow, type ReadableStore } from '../base/handles';
import type { StoreHolder } from '../base/handlers';
import { fileIdOf } from '../opening/file-id';
import { settingsInUse } from './settings-in-use';
import { readWorkshop } from './workshop';

/** What the page needs to know before it can show anything. */
export interface OpeningContext extends StoreHolder {
  readonly folders: WorkshopFolders;
  readonly programVersion: string;
  readonly isDemo: boolean;
}

export function readOpening({
  store,
  folders,
  programVersion,
  isDemo,
}: OpeningContext): ChannelOutput<'workshop:opening'> {
  return {
    workshop: readWorkshop(store),
    settingsInUse: settingsInUse(store),
    isEmpty: isEmptyNotebook(store),
    isDemo,
    programVersion,
    file: folders.file,
    fileId: fileIdOf(store),
  };
}

/** Whether the notebook never had a project or a fabric; deleted ones count. */
function isEmptyNotebook(store: ReadableStore): boolean {
  return oneRow(store, 'SELECT 1 FROM project UNION ALL SELECT 1 FROM fabric LIMIT 1') === undefined;
}

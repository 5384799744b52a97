import type { WorkshopFolders } from '#main/files/workshop-folders';
import type { ReadableStore } from '../base/handles';

/** What a backup needs. Restoring one replaces the open store. */
export interface BackupContext {
  store: ReadableStore;
  readonly folders: WorkshopFolders;
}

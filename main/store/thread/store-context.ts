import type { WorkshopFolders } from '#main/files/workshop-folders';
import type { ReadableStore } from '../base/handles';
import type { ReadTable } from '../import-export/stash-table';

/** What the store's thread works with. Restoring a backup puts another store in the place of the open one. */
export interface StoreContext {
  store: ReadableStore;
  readonly folders: WorkshopFolders;
  readonly programVersion: string;
  readonly isDemo: boolean;
  /** Where the files lie that the maker chose to bring in, by the token the page knows them by. */
  readonly tables: Map<string, string>;
  /** The table read last, by what it was read from: what was looked at is not read once more to be brought in. */
  lastTable: { readonly from: string; readonly read: ReadTable } | null;
}

import type { BackupContext } from '../backups/backup-context';
import type { ImportContext } from '../import-export/import-context';
import type { OpeningContext } from '../workshop/opening';

/** Everything the handlers of the store's thread work with. Restoring a backup replaces `store`. */
export interface StoreContext extends BackupContext, ImportContext, OpeningContext {
  store: BackupContext['store'];
}

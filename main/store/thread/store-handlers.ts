import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import { backupHandlers } from '../backups/handlers';
import { cuttingHandlers } from '../cutting/handlers';
import { dateHandlers } from '../dates/handlers';
import { ledgerHandlers } from '../fabric-use/handlers';
import { changeHandlers } from '../history/handlers';
import { tableHandlers } from '../import-export/handlers';
import { projectHandlers } from '../projects/handlers';
import { shoppingHandlers } from '../shopping/handlers';
import { stashHandlers } from '../stash/handlers';
import { tripHandlers } from '../trips/handlers';
import { workshopHandlers } from '../workshop/handlers';
import type { StoreContext } from './store-context';

type StoreHandlers = {
  readonly [Name in StoreChannelName]: (
    context: StoreContext,
    input: ChannelInput<Name>,
  ) => Result<ChannelOutput<Name>, Problem>;
};

/** The handler of every channel of the contract. A channel without one does not compile. */
export const storeHandlers: StoreHandlers = {
  ...projectHandlers,
  ...tripHandlers,
  ...stashHandlers,
  ...ledgerHandlers,
  ...tableHandlers,
  ...shoppingHandlers,
  ...cuttingHandlers,
  ...dateHandlers,
  ...workshopHandlers,
  ...changeHandlers,
  ...backupHandlers,
};

import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import type { ReadableStore } from './handles';

/** What every handler gets. An area that needs more, such as folders, names it as its own context. */
export interface StoreHolder {
  readonly store: ReadableStore;
}

/**
 * One handler for each channel of an area: `project:list` belongs to the area `project`. Inputs are checked before. A handler only
 * passes the call on: it has no SQL and no arithmetic.
 */
export type Handlers<Area extends string, Context extends StoreHolder = StoreHolder> = {
  readonly [Name in Extract<StoreChannelName, `${Area}:${string}`>]: (
    context: Context,
    input: ChannelInput<Name>,
  ) => Result<ChannelOutput<Name>, Problem>;
};

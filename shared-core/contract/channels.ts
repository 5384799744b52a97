import { calculationChannels } from './calculations';
import type { Channel, InputOf, OutputOf } from './channel';
import { clockChannels } from './clock';
import { contactChannels } from './contacts';
import { patternChannels } from './patterns';
import { placeChannels } from './places';
import type { Problem } from './problem';
import { cuttingChannels } from './cutting';
import { dateChannels } from './dates';
import { projectChannels } from './projects';
import { shoppingChannels } from './shopping';
import { stashChannels } from './stash';
import { stashNumbersChannels } from './stash-numbers';
import { stashSearchChannels } from './stash-searches';
import { stashTableChannels } from './stash-table';
import { tripChannels } from './trips';
import { shellChannels, workshopChannels } from './workshop';
import type { Result } from '#core/result';

/** Every call that the page may make; no other gets through. */
export const storeChannels = {
  ...projectChannels,
  ...tripChannels,
  ...contactChannels,
  ...clockChannels,
  ...calculationChannels,
  ...stashChannels,
  ...stashNumbersChannels,
  ...stashSearchChannels,
  ...stashTableChannels,
  ...shoppingChannels,
  ...cuttingChannels,
  ...patternChannels,
  ...placeChannels,
  ...dateChannels,
  ...workshopChannels,
};
export const channels = { ...storeChannels, ...shellChannels } satisfies Readonly<Record<string, Channel>>;

type Channels = typeof channels;
export type ChannelName = keyof Channels;
export type StoreChannelName = keyof typeof storeChannels;
export type ShellChannelName = keyof typeof shellChannels;
export type ChannelInput<Name extends ChannelName> = InputOf<Channels[Name]>;
export type ChannelOutput<Name extends ChannelName> = OutputOf<Channels[Name]>;
export type ChannelAnswer<Name extends ChannelName> = Result<ChannelOutput<Name>, Problem>;

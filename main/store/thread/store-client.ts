import type { ChannelAnswer, ChannelInput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { type Result, success } from '#core/result';
import type { MainProcessCallName, StartOptions } from './protocol';
import { type ReadPhoto, type ThumbnailMaker, photoReader } from './read-photo';
import { startThread, type StoreThread } from './store-thread';

/** The main process's side of the store. A call is answered once its change is on the disk. */
export interface StoreClient {
  readonly call: <Name extends StoreChannelName>(
    name: Name,
    input: ChannelInput<Name>,
  ) => Promise<ChannelAnswer<Name>>;
  /** The photo or its thumbnail; null if there is no such photo. */
  readonly readPhoto: ReadPhoto;
  /** Where the file of a project's pattern is. */
  readonly findPatternFile: (projectId: string) => Promise<Result<{ readonly file: string }, Problem>>;
  /** Gives a token by which the page can name a file the maker chose. */
  readonly offerTable: (file: string) => Promise<Result<{ readonly token: string }, Problem>>;
  /** The whole stash as text for a file. */
  readonly exportStash: (as: 'csv' | 'json') => Promise<Result<string, Problem>>;
  /** Folds the write-ahead log into the file and ends the thread. */
  readonly close: () => Promise<void>;
}

export interface StoreOptions extends StartOptions {
  /** Makes a small JPEG of a picture, or null if it cannot. Without it, the photo is its own thumbnail. */
  readonly makeThumbnail?: ThumbnailMaker;
}

/**
 * Opens a workshop in a thread of its own. If the thread dies, open calls are answered with `unexpected` and the thread is
 * restarted once.
 */
export async function startStore({
  makeThumbnail,
  ...options
}: StoreOptions): Promise<Result<StoreClient, Problem>> {
  const first = await startThread(options);
  if (!first.ok) return first;
  let isClosing = false;
  let current: Promise<Result<StoreThread, Problem>> = Promise.resolve(first);
  void first.value.ended.then(() => {
    if (!isClosing) current = startThread(options);
  });

  const ask = async (
    name: StoreChannelName | MainProcessCallName,
    input: unknown,
  ): Promise<Result<unknown, Problem>> => {
    const thread = await current;
    return thread.ok ? thread.value.ask(name, input) : thread;
  };
  return success({
    call: ask as StoreClient['call'],
    findPatternFile: (projectId) =>
      ask('main:find-pattern-file', { projectId }) as ReturnType<StoreClient['findPatternFile']>,
    offerTable: (file) => ask('main:offer-table', { file }) as ReturnType<StoreClient['offerTable']>,
    exportStash: (as) => ask('main:export-stash', { as }) as ReturnType<StoreClient['exportStash']>,
    readPhoto: photoReader(ask, makeThumbnail ?? (() => null)),
    close: async () => {
      isClosing = true;
      const thread = await current;
      if (!thread.ok) return;
      await thread.value.ask('main:close', null);
      await thread.value.ended;
    },
  });
}

import type { StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import type { PhotoFile } from '../projects/photos';

/** What the store's thread needs to start. */
export interface StartOptions {
  readonly file: string;
  readonly programVersion: string;
  readonly isDemo: boolean;
}

/** Calls only the main process can make, not the page. */
export interface MainProcessCalls {
  readonly 'main:find-photo': { readonly input: { readonly photoId: string }; readonly output: PhotoFile };
  /** Saves a thumbnail under the hash of its original. */
  readonly 'main:save-thumbnail': {
    readonly input: { readonly hash: string; readonly bytes: Uint8Array };
    readonly output: null;
  };
  /** Where the file of a project's pattern is. */
  readonly 'main:find-pattern-file': {
    readonly input: { readonly projectId: string };
    readonly output: { readonly file: string };
  };
  /** Gives a token by which the page can name a file the maker chose. */
  readonly 'main:offer-table': {
    readonly input: { readonly file: string };
    readonly output: { readonly token: string };
  };
  readonly 'main:export-stash': { readonly input: { readonly as: 'csv' | 'json' }; readonly output: string };
  readonly 'main:close': { readonly input: null; readonly output: null };
}

export type MainProcessCallName = keyof MainProcessCalls;

export interface CallMessage {
  readonly id: number;
  readonly name: StoreChannelName | MainProcessCallName;
  readonly input: unknown;
}

/** The thread's first message says whether the workshop is open; after that come answers with the number of their call. */
export type WorkerMessage =
  | { readonly kind: 'opened'; readonly result: Result<null, Problem> }
  | { readonly kind: 'answer'; readonly id: number; readonly answer: Result<unknown, Problem> };

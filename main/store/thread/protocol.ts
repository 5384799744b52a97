import type { StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import type { PhotoPlace } from '../projects/photos';

/** What the store's thread is told when it starts. */
export interface StartOptions {
  readonly file: string;
  readonly programVersion: string;
  readonly isDemo: boolean;
}

/** Calls of the main process itself, which the page cannot make. */
export interface InnerCalls {
  /** Where the picture of a photo is. */
  readonly 'inner:find-photo': { readonly input: { readonly photoId: string }; readonly output: PhotoPlace };
  /** Keeps a small picture made of an original, by the hash of the original. */
  readonly 'inner:keep-thumbnail': {
    readonly input: { readonly hash: string; readonly bytes: Uint8Array };
    readonly output: null;
  };
  /** Lets the page name a file the maker chose by a token. */
  readonly 'inner:offer-table': {
    readonly input: { readonly file: string };
    readonly output: { readonly token: string };
  };
  readonly 'inner:export-stash': { readonly input: { readonly as: 'csv' | 'json' }; readonly output: string };
  readonly 'inner:close': { readonly input: null; readonly output: null };
}

export type InnerName = keyof InnerCalls;

export interface CallMessage {
  readonly id: number;
  readonly name: StoreChannelName | InnerName;
  readonly input: unknown;
}

/** The first message of the thread says whether the workshop is open; then come answers by the number of their call. */
export type WorkerMessage =
  | { readonly kind: 'opened'; readonly result: Result<null, Problem> }
  | { readonly kind: 'answer'; readonly id: number; readonly answer: Result<unknown, Problem> };

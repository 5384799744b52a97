import { readFile } from 'node:fs/promises';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import type { PhotoFile } from '../projects/photos';
import type { MainProcessCallName } from './protocol';

export type ReadPhoto = (
  photoId: string,
  isThumbnail: boolean,
) => Promise<{ readonly bytes: Uint8Array; readonly type: string } | null>;

export type ThumbnailMaker = (bytes: Uint8Array, type: string) => Uint8Array | null;

type AskStore = (name: MainProcessCallName, input: unknown) => Promise<Result<unknown, Problem>>;

/** Reads photos outside the store's thread. A thumbnail is made and saved the first time it is needed. */
export function photoReader(ask: AskStore, makeThumbnail: ThumbnailMaker): ReadPhoto {
  return async (photoId, isThumbnail) => {
    const found = (await ask('main:find-photo', { photoId })) as Result<PhotoFile, Problem>;
    if (!found.ok) return null;
    const { file, hash, type, thumbnail } = found.value;
    if (isThumbnail && thumbnail !== null) return { bytes: thumbnail, type: 'image/jpeg' };
    const bytes = await readFile(file).catch(() => null);
    if (bytes === null) return null;
    const small = isThumbnail ? makeThumbnail(bytes, type) : null;
    if (small === null) return { bytes, type };
    await ask('main:save-thumbnail', { hash, bytes: small });
    return { bytes: small, type: 'image/jpeg' };
  };
}

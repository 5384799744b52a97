import { readFile } from 'node:fs/promises';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import type { PhotoPlace } from '../projects/photos';
import type { InnerName } from './protocol';

export type ReadPhoto = (
  photoId: string,
  isThumbnail: boolean,
) => Promise<{ readonly bytes: Uint8Array; readonly type: string } | null>;

export type ThumbnailMaker = (bytes: Uint8Array, type: string) => Uint8Array | null;

type AskInner = (name: InnerName, input: unknown) => Promise<Result<unknown, Problem>>;

/** Reads pictures outside the store's thread; a small one is made the first time it is asked for, and kept. */
export function photoReader(ask: AskInner, makeThumbnail: ThumbnailMaker): ReadPhoto {
  return async (photoId, isThumbnail) => {
    const found = (await ask('inner:find-photo', { photoId })) as Result<PhotoPlace, Problem>;
    if (!found.ok) return null;
    const { file, hash, type, thumbnail } = found.value;
    if (isThumbnail && thumbnail !== null) return { bytes: thumbnail, type: 'image/jpeg' };
    const bytes = await readFile(file).catch(() => null);
    if (bytes === null) return null;
    const small = isThumbnail ? makeThumbnail(bytes, type) : null;
    if (small === null) return { bytes, type };
    await ask('inner:keep-thumbnail', { hash, bytes: small });
    return { bytes: small, type: 'image/jpeg' };
  };
}

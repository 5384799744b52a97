import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';
import { cleanPng, cleanWebp } from './chunked-metadata';
import { cleanJpeg } from './jpeg-metadata';
import { type PhotoType, photoTypeOf } from './photo-type';
import { writeWholeFile } from './whole-file';

export const PHOTO_BYTES_AT_MOST = 40 * 1024 * 1024;

export interface KeptPicture {
  /** SHA-256 of what is kept, in lower-case hex: its file name. */
  readonly hash: string;
  readonly type: PhotoType;
  readonly bytes: number;
}

/**
 * Keeps a picture under the hash of its content, without what it tells of place and camera. A picture that is there
 * already is left as it is; none is ever rewritten or removed, so that undo and every backup find theirs.
 */
export function keepPicture(folder: string, bytes: Uint8Array): Result<KeptPicture, Problem> {
  const type = bytes.length > PHOTO_BYTES_AT_MOST ? null : photoTypeOf(bytes);
  const cleaned = type === null ? null : clean(type, bytes);
  if (type === null || cleaned === null) return failure<Problem>({ code: 'not-a-photo' });
  const hash = createHash('sha256').update(cleaned).digest('hex');
  const file = pictureFile(folder, hash, type);
  try {
    if (!isThereWhole(file, cleaned.length)) writeWholeFile(file, cleaned);
  } catch (error) {
    return failure<Problem>({
      code: 'file-unreadable',
      detail: error instanceof Error ? error.message : String(error),
    });
  }
  return success({ hash, type, bytes: cleaned.length });
}

export function pictureFile(folder: string, hash: string, type: PhotoType): string {
  return path.join(folder, `${hash}.${type.slice('image/'.length)}`);
}

function isThereWhole(file: string, bytes: number): boolean {
  return fs.existsSync(file) && fs.statSync(file).size === bytes;
}

function clean(type: PhotoType, bytes: Uint8Array): Uint8Array | null {
  switch (type) {
    case 'image/jpeg':
      return cleanJpeg(bytes);
    case 'image/png':
      return cleanPng(bytes);
    case 'image/webp':
      return cleanWebp(bytes);
  }
}

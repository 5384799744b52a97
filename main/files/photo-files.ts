import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result, success } from '#core/result';
import { cleanPng, cleanWebp } from './chunked-metadata';
import { cleanJpeg } from './jpeg-metadata';
import { type PhotoType, photoTypeOf } from './photo-type';
import { writeWholeFile } from './whole-file';

export const MAX_PHOTO_BYTES = 40 * 1024 * 1024;

export interface SavedPicture {
  /** SHA-256 of the saved bytes in lower-case hex, which is also the file name. */
  readonly hash: string;
  readonly type: PhotoType;
  readonly bytes: number;
}

/**
 * Saves a picture under the hash of its content, without metadata about place and camera. A saved picture is never rewritten or
 * deleted, so that undo and every backup still find it.
 */
export function savePicture(folder: string, bytes: Uint8Array): Result<SavedPicture, Problem> {
  const type = bytes.length > MAX_PHOTO_BYTES ? null : photoTypeOf(bytes);
  const cleaned = type === null ? null : clean(type, bytes);
  if (type === null || cleaned === null) return failure<Problem>({ code: 'not-a-photo' });
  const hash = createHash('sha256').update(cleaned).digest('hex');
  const file = pictureFile(folder, hash, type);
  try {
    if (!isSavedWhole(file, cleaned.length)) writeWholeFile(file, cleaned);
  } catch (error) {
    return failure<Problem>({
      code: 'file-unreadable',
      detail: messageOf(error),
    });
  }
  return success({ hash, type, bytes: cleaned.length });
}

export function pictureFile(folder: string, hash: string, type: PhotoType): string {
  return path.join(folder, `${hash}.${type.slice('image/'.length)}`);
}

function isSavedWhole(file: string, bytes: number): boolean {
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

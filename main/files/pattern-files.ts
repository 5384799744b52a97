import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result, success } from '#core/result';
import { MAX_PHOTO_BYTES, pictureFile, savePicture } from './photo-files';
import { ascii, type PhotoType, startsWith } from './photo-type';
import { writeWholeFile } from './whole-file';

export type PatternFileType = PhotoType | 'application/pdf';

export interface SavedPatternFile {
  /** SHA-256 of the saved bytes in lower-case hex, which is also the file name. */
  readonly hash: string;
  readonly type: PatternFileType;
  readonly bytes: number;
}

/** Saves a PDF as it is, and a picture as photos are saved. Like a photo it is never rewritten or deleted. */
export function savePatternFile(folder: string, bytes: Uint8Array): Result<SavedPatternFile, Problem> {
  const isPdf = bytes.length <= MAX_PHOTO_BYTES && startsWith(bytes, 0, ascii('%PDF-'));
  if (!isPdf) {
    const picture = savePicture(folder, bytes);
    const isOther = !picture.ok && picture.error.code === 'not-a-photo';
    return isOther ? failure<Problem>({ code: 'not-a-pattern-file' }) : picture;
  }
  const hash = createHash('sha256').update(bytes).digest('hex');
  const file = patternFile(folder, hash, 'application/pdf');
  try {
    if (!fs.existsSync(file) || fs.statSync(file).size !== bytes.length) writeWholeFile(file, bytes);
  } catch (error) {
    return failure<Problem>({ code: 'file-unreadable', detail: messageOf(error) });
  }
  return success({ hash, type: 'application/pdf', bytes: bytes.length });
}

export function patternFile(folder: string, hash: string, type: PatternFileType): string {
  return type === 'application/pdf' ? path.join(folder, `${hash}.pdf`) : pictureFile(folder, hash, type);
}

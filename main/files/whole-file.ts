import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

/** Writes a file so that it is either complete or missing, even after a power cut. */
export function writeWholeFile(file: string, bytes: Uint8Array): void {
  const folder = path.dirname(file);
  fs.mkdirSync(folder, { recursive: true });
  const scratch = path.join(folder, `.${path.basename(file)}.${randomUUID()}.part`);
  try {
    const opened = fs.openSync(scratch, 'wx');
    try {
      fs.writeSync(opened, bytes);
      fs.fsyncSync(opened);
    } finally {
      fs.closeSync(opened);
    }
    moveWholeFile(scratch, file);
  } finally {
    fs.rmSync(scratch, { force: true });
  }
}

/** Moves a finished file to its place, replacing what was there, and makes sure the move reaches the disk. */
export function moveWholeFile(from: string, to: string): void {
  fs.renameSync(from, to);
  // Windows cannot open folders and does not need this step.
  if (process.platform !== 'win32') flush(path.dirname(to));
}

/** Makes sure that the contents of a file or folder have reached the disk. */
export function flush(place: string): void {
  const opened = fs.openSync(place, 'r');
  try {
    fs.fsyncSync(opened);
  } finally {
    fs.closeSync(opened);
  }
}

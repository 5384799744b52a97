import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

/** Writes a file that is either there whole, also after a power cut, or not there at all. */
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

/** Puts a finished file in its place, over what was there, and makes the folder remember it. */
export function moveWholeFile(from: string, to: string): void {
  fs.renameSync(from, to);
  // Windows does not open folders, and needs no such step.
  if (process.platform !== 'win32') flush(path.dirname(to));
}

/** Makes sure that what a file or folder holds has reached the disk. */
export function flush(place: string): void {
  const opened = fs.openSync(place, 'r');
  try {
    fs.fsyncSync(opened);
  } finally {
    fs.closeSync(opened);
  }
}

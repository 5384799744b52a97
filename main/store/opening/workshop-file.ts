import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result, success } from '#core/result';

/** "Ring" in ASCII. It marks an SQLite file as a workshop. */
export const APPLICATION_ID = 0x52_69_6e_67;

const MAGIC = 'SQLite format 3\0';
const HEADER_BYTES = 100;
const VERSION_AT = 60;
const APPLICATION_AT = 68;

/**
 * The format version of a workshop file, or null if there is no file yet. It is read without opening the file in SQLite, so that a
 * refused file does not change by a single byte and nothing appears beside it.
 */
export function inspectWorkshopFile(file: string): Result<number | null, Problem> {
  try {
    if (!fs.existsSync(file) || fs.statSync(file).size === 0) return success(null);
    if (hasUnfinishedLog(file)) return inspectCopy(file);
    return readHeader(file);
  } catch (error) {
    return failure(unreadable(error));
  }
}

export function unreadable(error: unknown): Problem {
  return { code: 'file-unreadable', detail: messageOf(error) };
}

function readHeader(file: string): Result<number, Problem> {
  const header = Buffer.alloc(HEADER_BYTES);
  const opened = fs.openSync(file, 'r');
  try {
    fs.readSync(opened, header, 0, HEADER_BYTES, 0);
  } finally {
    fs.closeSync(opened);
  }
  if (header.toString('latin1', 0, MAGIC.length) !== MAGIC) {
    return failure({ code: 'file-unreadable', detail: 'This is not a workshop file.' });
  }
  return checkOwner(header.readInt32BE(APPLICATION_AT), header.readInt32BE(VERSION_AT));
}

function checkOwner(applicationId: number, version: number): Result<number, Problem> {
  if (applicationId === APPLICATION_ID) return success(version);
  return failure({ code: 'file-unreadable', detail: 'This file was made by another program.' });
}

function hasUnfinishedLog(file: string): boolean {
  const log = `${file}-wal`;
  return fs.existsSync(log) && fs.statSync(log).size > 0;
}

/** After a crash the write-ahead log may hold a newer header than the file, so SQLite reads a copy of both. */
function inspectCopy(file: string): Result<number, Problem> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'ringbound-look-'));
  try {
    const copy = path.join(folder, 'copy.sqlite');
    fs.copyFileSync(file, copy, fs.constants.COPYFILE_FICLONE);
    fs.copyFileSync(`${file}-wal`, `${copy}-wal`);
    const database = new Database(copy);
    try {
      const number = (pragma: string): number => database.pragma(pragma, { simple: true }) as number;
      return checkOwner(number('application_id'), number('user_version'));
    } finally {
      database.close();
    }
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

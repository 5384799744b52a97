import fs from 'node:fs';
import type { TableEncoding, TableRefusal } from '#core/domain/stash-table';

/** Far larger than any stash, and small compared to any computer's memory. */
const MAX_TABLE_BYTES = 64 * 2 ** 20;
const CHUNK_BYTES = 2 ** 18;

/** Stops reading a table. It is caught where the reading started. */
export class TableRefused extends Error {
  readonly refusal: TableRefusal;

  constructor(refusal: TableRefusal) {
    super(refusal.why);
    this.name = 'TableRefused';
    this.refusal = refusal;
  }
}

/**
 * The text of a file in parts, never all at once. A file that is too large is refused before it is read. Bytes that are not text in
 * this encoding are refused with their line and column.
 */
export function* textOfFile(file: string, encoding: TableEncoding): Generator<string> {
  const handle = openFile(file);
  try {
    const { size } = fs.fstatSync(handle);
    if (size > MAX_TABLE_BYTES) {
      throw new TableRefused({ why: 'too-large', bytes: size, most: MAX_TABLE_BYTES });
    }
    yield* decoded(handle, encoding);
  } finally {
    fs.closeSync(handle);
  }
}

/** A text that changes when the file is written again; null if there is no file. */
export function fileState(file: string): string | null {
  const found = fs.statSync(file, { throwIfNoEntry: false });
  return found === undefined ? null : `${String(found.size)} ${String(found.mtimeMs)}`;
}

function openFile(file: string): number {
  try {
    if (!fs.statSync(file).isFile()) throw new Error('Not a file');
    return fs.openSync(file, 'r');
  } catch {
    throw new TableRefused({ why: 'gone' });
  }
}

function* decoded(handle: number, asked: TableEncoding): Generator<string> {
  const buffer = Buffer.alloc(CHUNK_BYTES);
  let decoder: InstanceType<typeof TextDecoder> | null = null;
  let line = 1;
  for (;;) {
    const bytes = buffer.subarray(0, fs.readSync(handle, buffer));
    decoder ??= new TextDecoder(markedEncoding(bytes) ?? asked, { fatal: true });
    const isLast = bytes.length === 0;
    let text: string;
    try {
      text = decoder.decode(bytes, { stream: !isLast });
    } catch {
      throw new TableRefused(badBytes(bytes, decoder.encoding, line));
    }
    if (text.includes('\0'))
      throw new TableRefused({ why: 'not-text', line: line + newlines(text.split('\0')[0] ?? '') });
    line += newlines(text);
    if (text !== '') yield text;
    if (isLast) return;
  }
}

/** The encoding given by a byte order mark, which overrides the one asked for. */
function markedEncoding(bytes: Uint8Array): TableEncoding | null {
  const [first, second, third] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return first === 0xef && second === 0xbb && third === 0xbf ? 'utf-8' : null;
}

/** Where the first bytes in this part are that are not text. A letter split between two parts is reported on its own line. */
function badBytes(bytes: Uint8Array, encoding: string, firstLine: number): TableRefusal {
  const text = new TextDecoder(encoding).decode(bytes);
  const before = text.slice(0, Math.max(0, text.indexOf('\ufffd'))).split('\n');
  const column = (before.at(-1)?.length ?? 0) + 1;
  return { why: 'wrong-encoding', line: firstLine + before.length - 1, column };
}

export function newlines(text: string): number {
  let count = 0;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) count += 1;
  return count;
}

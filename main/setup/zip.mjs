import fs from 'node:fs/promises';
import { promisify } from 'node:util';
import zlib from 'node:zlib';

const inflate = promisify(zlib.inflateRaw);

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;
const localSignature = 0x04034b50;
const endSize = 22;
const longestComment = 0xffff;

/**
 * One file or folder of an archive; `mode` is its Unix file mode, 0 when the archive does not say.
 *
 * @typedef {Readonly<{ name: string, mode: number, method: number, packedSize: number, size: number, offset: number }>} ZipEntry
 */

/**
 * @param {import('node:fs/promises').FileHandle} file
 * @param {number} position
 * @param {number} length
 */
async function readExactly(file, position, length) {
  const buffer = Buffer.alloc(length);
  const { bytesRead } = await file.read(buffer, 0, length, position);
  if (bytesRead !== length) throw new Error('the archive ends early');
  return buffer;
}

/**
 * Lists a zip archive from its central directory; zip64 archives are refused.
 *
 * @param {import('node:fs/promises').FileHandle} file
 * @returns {Promise<ZipEntry[]>}
 */
export async function listZip(file) {
  const { size: fileSize } = await file.stat();
  const tailSize = Math.min(fileSize, endSize + longestComment);
  const tail = await readExactly(file, fileSize - tailSize, tailSize);
  let end = tail.length - endSize;
  while (end >= 0 && tail.readUInt32LE(end) !== endSignature) end -= 1;
  if (end < 0) throw new Error('no zip archive: its end record is missing');
  const count = tail.readUInt16LE(end + 10);
  const size = tail.readUInt32LE(end + 12);
  const start = tail.readUInt32LE(end + 16);
  if (count === 0xffff || start === 0xffffffff) throw new Error('zip64 archives are not read');

  const directory = await readExactly(file, start, size);
  /** @type {ZipEntry[]} */
  const entries = [];
  for (let at = 0; entries.length < count;) {
    if (directory.readUInt32LE(at) !== entrySignature) throw new Error('the archive has a broken directory');
    const nameLength = directory.readUInt16LE(at + 28);
    entries.push({
      method: directory.readUInt16LE(at + 10),
      packedSize: directory.readUInt32LE(at + 20),
      size: directory.readUInt32LE(at + 24),
      mode: directory.readUInt32LE(at + 38) >>> 16,
      offset: directory.readUInt32LE(at + 42),
      name: directory.toString('utf8', at + 46, at + 46 + nameLength),
    });
    at += 46 + nameLength + directory.readUInt16LE(at + 30) + directory.readUInt16LE(at + 32);
  }
  return entries;
}

/**
 * The bytes of one entry, checked against its length.
 *
 * @param {import('node:fs/promises').FileHandle} file
 * @param {ZipEntry} entry
 * @returns {Promise<Buffer>}
 */
export async function readZipEntry(file, entry) {
  const header = await readExactly(file, entry.offset, 30);
  if (header.readUInt32LE(0) !== localSignature) throw new Error(`${entry.name}: its header is broken`);
  const start = entry.offset + 30 + header.readUInt16LE(26) + header.readUInt16LE(28);
  const packed = await readExactly(file, start, entry.packedSize);
  const bytes = entry.method === 0 ? packed : entry.method === 8 ? await inflate(packed) : undefined;
  if (bytes === undefined)
    throw new Error(`${entry.name}: packed in a way that is not read (${entry.method})`);
  if (bytes.length !== entry.size)
    throw new Error(`${entry.name}: ${bytes.length} bytes, ${entry.size} expected`);
  return bytes;
}

/**
 * Opens an archive for the time of `use`.
 *
 * @template T
 * @param {string} path
 * @param {(file: import('node:fs/promises').FileHandle) => Promise<T>} use
 * @returns {Promise<T>}
 */
export async function withZip(path, use) {
  const file = await fs.open(path, 'r');
  try {
    return await use(file);
  } finally {
    await file.close();
  }
}

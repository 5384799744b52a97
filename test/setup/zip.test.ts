import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { listZip, readZipEntry, withZip } from '#setup/zip';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { makeZip, type ZipFile } from './make-zip';

/** Reads a whole archive back as name, mode and text. */
const readBack = (archive: Buffer): Promise<readonly { name: string; mode: number; text: string }[]> =>
  withTemporaryFolder(async (folder) => {
    const file = path.join(folder, 'archive.zip');
    await writeFile(file, archive);
    return withZip(file, async (handle) => {
      const read = [];
      for (const entry of await listZip(handle)) {
        const text = (await readZipEntry(handle, entry)).toString();
        read.push({ name: entry.name, mode: entry.mode & 0o777, text });
      }
      return read;
    });
  });

const files: readonly ZipFile[] = [
  { name: 'kept/plain.txt', text: 'as it is', method: 0 },
  { name: 'kept/run', text: 'again and '.repeat(500), mode: 0o755 },
  { name: 'größe.txt', text: 'ü' },
  { name: 'empty', text: '' },
];

describe('a zip archive', () => {
  test('gives back every file, stored or deflated, with its mode', async () => {
    expect(await readBack(makeZip(files))).toEqual(
      files.map(({ name, text, mode = 0o644 }) => ({ name, mode, text })),
    );
  });

  test('is found before a comment at its end', async () => {
    expect(await readBack(makeZip(files, 'packed on a Tuesday'))).toHaveLength(files.length);
  });

  test('with no files is an empty list', async () => {
    expect(await readBack(makeZip([]))).toEqual([]);
  });

  test('whose file is not as long as it claims is refused', async () => {
    await expect(readBack(makeZip([{ name: 'a', text: 'abc', claimedSize: 4 }]))).rejects.toThrow(
      'a: 3 bytes, 4 expected',
    );
  });

  test('packed in another way is refused', async () => {
    await expect(readBack(makeZip([{ name: 'a', text: 'abc', method: 12 }]))).rejects.toThrow(
      'not read (12)',
    );
  });

  test('cut short, or none at all, is refused', async () => {
    await expect(readBack(makeZip(files).subarray(0, -30))).rejects.toThrow('end record is missing');
    await expect(readBack(Buffer.from('plain text'))).rejects.toThrow('end record is missing');
    await expect(readBack(makeZip(files).subarray(40))).rejects.toThrow();
  });

  test('too large for the plain format is refused, not misread', async () => {
    const archive = makeZip(files);
    archive.writeUInt16LE(0xffff, archive.length - 22 + 10);
    await expect(readBack(archive)).rejects.toThrow('zip64');
  });
});

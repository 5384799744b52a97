import { describe, expect, test } from 'vitest';
import { packAsar } from '#setup/asar';

/** Takes an archive apart by the published layout: two nested pickles with sizes, JSON, then the contents. */
function unpack(archive: Buffer): Readonly<Record<string, string>> {
  expect(archive.readUInt32LE(0)).toBe(4);
  const headerSize = archive.readUInt32LE(4);
  const jsonSize = archive.readUInt32LE(12);
  expect(archive.readUInt32LE(8)).toBe(headerSize - 4);
  expect(headerSize % 4).toBe(0);
  const { files } = JSON.parse(archive.toString('utf8', 16, 16 + jsonSize)) as {
    files: Readonly<Record<string, { size: number; offset: string }>>;
  };
  const start = 8 + headerSize;
  return Object.fromEntries(
    Object.entries(files).map(([name, { size, offset }]) => {
      const from = start + Number(offset);
      return [name, archive.toString('utf8', from, from + size)];
    }),
  );
}

describe('an asar archive', () => {
  test.for([
    { 'package.json': '{"main":"a.js"}', 'a.js': 'one();' },
    { a: '', b: 'größer als ein Byte', c: 'x' },
    { 'name-of-any-length': 'y'.repeat(1000) },
  ])('gives back the files it was packed from: %o', (files) => {
    expect(unpack(packAsar(files))).toEqual(files);
  });
});

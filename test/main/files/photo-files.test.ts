import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { keepPicture, PHOTO_BYTES_AT_MOST } from '#main/files/photo-files';
import { app1, comment, exif, jpeg, png, pngChunk, riffChunk, webp, xmp } from '#test/helpers/pictures';
import { temporaryFolder } from '#test/helpers/workshop';

function kept(bytes: Uint8Array): { bytes: Uint8Array; name: string; type: string } {
  const folder = temporaryFolder();
  const picture = keepPicture(folder, bytes);
  if (!picture.ok) throw new Error(JSON.stringify(picture.error));
  const [name = ''] = fs.readdirSync(folder);
  return { bytes: Uint8Array.from(fs.readFileSync(path.join(folder, name))), name, type: picture.value.type };
}

describe('a picture that is kept', () => {
  test.each([
    ['JPEG', jpeg(), 'jpeg'],
    ['PNG', png(), 'png'],
    ['WebP', webp(0), 'webp'],
  ])('as %s has the hash of its content for a name, and its content is untouched', (_what, bytes, end) => {
    const file = kept(bytes);
    expect(file.name).toBe(`${createHash('sha256').update(bytes).digest('hex')}.${end}`);
    expect(file.bytes).toEqual(bytes);
  });

  test('twice is one file, which is not written again', () => {
    const folder = temporaryFolder();
    keepPicture(folder, png());
    const [name = ''] = fs.readdirSync(folder);
    const before = fs.statSync(path.join(folder, name));
    keepPicture(folder, png(pngChunk('tEXt', Buffer.from('Author\0somebody'))));
    expect(fs.readdirSync(folder)).toEqual([name]);
    expect(fs.statSync(path.join(folder, name)).ino).toBe(before.ino);
  });

  test('in place of a half-written file of the same name makes it whole', () => {
    const folder = temporaryFolder();
    keepPicture(folder, png());
    const [name = ''] = fs.readdirSync(folder);
    fs.truncateSync(path.join(folder, name), 10);
    keepPicture(folder, png());
    expect(Uint8Array.from(fs.readFileSync(path.join(folder, name)))).toEqual(png());
  });
});

describe('what a picture tells of place, time and camera', () => {
  test('is taken out of a JPEG, with comments and pictures behind its end; its colors stay', () => {
    const told = jpeg(app1(exif(1)), xmp, comment('At home'));
    const behind = Uint8Array.from(Buffer.concat([told, jpeg(app1(exif(1)))]));
    expect(kept(behind).bytes).toEqual(jpeg());
  });

  test('but which side of a JPEG is up is kept', () => {
    const file = Buffer.from(kept(jpeg(app1(exif(6)))).bytes);
    expect(file.includes('GPS')).toBe(false);
    expect(file.includes(Buffer.from([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6]))).toBe(true);
    // What is kept is a whole JPEG with the same rest, and keeping it again changes nothing.
    expect(kept(Uint8Array.from(file)).bytes).toEqual(Uint8Array.from(file));
  });

  test('is taken out of a PNG', () => {
    const told = png(pngChunk('eXIf', exif(1)), pngChunk('iTXt', Buffer.from('XML:com.adobe.xmp\0GPS')));
    expect(kept(told).bytes).toEqual(png());
  });

  test('is taken out of a WebP, whose header then no longer promises it', () => {
    const told = webp(0x0c | 0x10, riffChunk('EXIF', exif(1)), riffChunk('XMP ', Buffer.from('<GPS/>')));
    expect(kept(told).bytes).toEqual(webp(0x10));
  });
});

describe('refused as no photo is', () => {
  const bomb = new Uint8Array(PHOTO_BYTES_AT_MOST + 1);
  bomb.set(jpeg());
  test.each([
    ['nothing', new Uint8Array(0)],
    ['a text', Uint8Array.from(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'))],
    ['a GIF', Uint8Array.from(Buffer.from('GIF89a\x01\0\x01\0'))],
    ['a JPEG cut short', jpeg().slice(0, -3)],
    ['a JPEG with a segment beyond its end', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0xff, 0xff, 1])],
    ['a JPEG with a segment of no length', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 0, 0xff, 0xd9])],
    ['the first bytes of a JPEG', Uint8Array.from([0xff, 0xd8, 0xff])],
    ['a PNG cut short', png().slice(0, -5)],
    [
      'a PNG with an endless chunk',
      Uint8Array.from([...png().slice(0, 8), 0xff, 0xff, 0xff, 0xff, 73, 68, 65, 84, 0, 0, 0, 0]),
    ],
    ['a WebP that promises more than there is', webp(0).slice(0, -2)],
    ['the first bytes of a WebP', Uint8Array.from(Buffer.from('RIFF\0\0\0\0WEBP'))],
    ['more than 40 MB', bomb],
  ])('%s', (_what, bytes) => {
    const folder = temporaryFolder();
    expect(keepPicture(folder, bytes)).toEqual({ ok: false, error: { code: 'not-a-photo' } });
    expect(fs.readdirSync(folder)).toEqual([]);
  });
});

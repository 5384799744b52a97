import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { savePicture, MAX_PHOTO_BYTES } from '#main/files/photo-files';
import { app1, comment, exif, jpeg, png, pngChunk, riffChunk, webp, xmp } from '#test/helpers/pictures';
import { temporaryFolder } from '#test/helpers/workshop';

function kept(bytes: Uint8Array): { bytes: Uint8Array; name: string; type: string } {
  const folder = temporaryFolder();
  const picture = savePicture(folder, bytes);
  if (!picture.ok) throw new Error(JSON.stringify(picture.error));
  const [name = ''] = fs.readdirSync(folder);
  return { bytes: Uint8Array.from(fs.readFileSync(path.join(folder, name))), name, type: picture.value.type };
}

describe('a saved picture', () => {
  test.each([
    ['JPEG', jpeg(), 'jpeg'],
    ['PNG', png(), 'png'],
    ['WebP', webp(0), 'webp'],
  ])('as %s has the hash of its content for a name, and its content is untouched', (_what, bytes, end) => {
    const file = kept(bytes);
    expect(file.name).toBe(`${createHash('sha256').update(bytes).digest('hex')}.${end}`);
    expect(file.bytes).toEqual(bytes);
  });

  test('is one file when saved twice, and is not written again', () => {
    const folder = temporaryFolder();
    savePicture(folder, png());
    const [name = ''] = fs.readdirSync(folder);
    const before = fs.statSync(path.join(folder, name));
    savePicture(folder, png(pngChunk('tEXt', Buffer.from('Author\0somebody'))));
    expect(fs.readdirSync(folder)).toEqual([name]);
    expect(fs.statSync(path.join(folder, name)).ino).toBe(before.ino);
  });

  test('replaces an unfinished file of the same name', () => {
    const folder = temporaryFolder();
    savePicture(folder, png());
    const [name = ''] = fs.readdirSync(folder);
    fs.truncateSync(path.join(folder, name), 10);
    savePicture(folder, png());
    expect(Uint8Array.from(fs.readFileSync(path.join(folder, name)))).toEqual(png());
  });
});

describe('metadata about place, time and camera', () => {
  test('is removed from a JPEG, with comments and extra pictures after its end; its colors stay', () => {
    const told = jpeg(app1(exif(1)), xmp, comment('At home'));
    const behind = Uint8Array.from(Buffer.concat([told, jpeg(app1(exif(1)))]));
    expect(kept(behind).bytes).toEqual(jpeg());
  });

  test('is removed from a JPEG except for its orientation', () => {
    const file = Buffer.from(kept(jpeg(app1(exif(6)))).bytes);
    expect(file.includes('GPS')).toBe(false);
    expect(file.includes(Buffer.from([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6]))).toBe(true);
    // The result is a complete JPEG with the same image data, and saving it again changes nothing.
    expect(kept(Uint8Array.from(file)).bytes).toEqual(Uint8Array.from(file));
  });

  test('is removed from a PNG', () => {
    const told = png(pngChunk('eXIf', exif(1)), pngChunk('iTXt', Buffer.from('XML:com.adobe.xmp\0GPS')));
    expect(kept(told).bytes).toEqual(png());
  });

  test('is removed from a WebP, and its header no longer announces it', () => {
    const told = webp(0x0c | 0x10, riffChunk('EXIF', exif(1)), riffChunk('XMP ', Buffer.from('<GPS/>')));
    expect(kept(told).bytes).toEqual(webp(0x10));
  });
});

describe('refused as not a photo', () => {
  const bomb = new Uint8Array(MAX_PHOTO_BYTES + 1);
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
    expect(savePicture(folder, bytes)).toEqual({ ok: false, error: { code: 'not-a-photo' } });
    expect(fs.readdirSync(folder)).toEqual([]);
  });
});

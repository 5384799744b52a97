import zlib from 'node:zlib';

/** Small whole pictures for tests, with and without what cameras write into them. */
const ascii = (text: string): Buffer => Buffer.from(text, 'latin1');
const be16 = (value: number): Buffer => Buffer.from([value >> 8, value & 255]);
const be32 = (value: number): Buffer => Buffer.concat([be16(value >>> 16), be16(value & 0xffff)]);
const le32 = (value: number): Buffer => Buffer.from(be32(value)).reverse();

function segment(marker: number, body: Buffer): Buffer {
  return Buffer.concat([Buffer.from([0xff, marker]), be16(body.length + 2), body]);
}

/** A TIFF directory with an orientation and, to be found again, a place. */
export function exif(orientation: number): Buffer {
  const entry = Buffer.concat([be16(0x0112), be16(3), be32(1), be16(orientation), be16(0)]);
  return Buffer.concat([ascii('Exif\0\0MM\0*'), be32(8), be16(1), entry, be32(0), ascii('GPS 47.11 N')]);
}

const JFIF = segment(0xe0, Buffer.concat([ascii('JFIF\0'), Buffer.from([1, 2, 0, 0, 1, 0, 1, 0, 0])]));
const COLOR_PROFILE = segment(0xe2, ascii('ICC_PROFILE\0\x01\x01its colors'));
/** Holds an escaped FF and a restart marker, which are no ends. */
const SCAN = Buffer.concat([
  segment(0xda, Buffer.from([1, 1, 0, 0, 63, 0])),
  Buffer.from([0x12, 0xff, 0, 0xff, 0xd0, 0x34]),
]);
const EOI = Buffer.from([0xff, 0xd9]);

export function jpeg(...told: readonly Buffer[]): Uint8Array {
  const parts = [Buffer.from([0xff, 0xd8]), JFIF, ...told, COLOR_PROFILE, SCAN, EOI];
  return Uint8Array.from(Buffer.concat(parts));
}

export const app1 = (body: Buffer): Buffer => segment(0xe1, body);
export const comment = (text: string): Buffer => segment(0xfe, ascii(text));
export const xmp = app1(ascii('http://ns.adobe.com/xap/1.0/\0<GPS>47.11</GPS>'));

export function pngChunk(type: string, body: Buffer): Buffer {
  const data = Buffer.concat([ascii(type), body]);
  return Buffer.concat([be32(body.length), data, be32(zlib.crc32(data))]);
}

export function png(...told: readonly Buffer[]): Uint8Array {
  const header = Buffer.concat([be32(1), be32(1), Buffer.from([8, 0, 0, 0, 0])]);
  const picture = [
    pngChunk('IHDR', header),
    ...told,
    pngChunk('IDAT', zlib.deflateSync(Buffer.from([0, 128]))),
  ];
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Uint8Array.from(Buffer.concat([signature, ...picture, pngChunk('IEND', Buffer.alloc(0))]));
}

export function riffChunk(type: string, body: Buffer): Buffer {
  return Buffer.concat([ascii(type), le32(body.length), body, Buffer.alloc(body.length % 2)]);
}

/** An extended WebP whose header says whether metadata follows. */
export function webp(flags: number, ...told: readonly Buffer[]): Uint8Array {
  const extended = riffChunk('VP8X', Buffer.from([flags, 0, 0, 0, 0, 0, 0, 0, 0, 0]));
  const body = Buffer.concat([ascii('WEBP'), extended, riffChunk('VP8 ', ascii('pixels')), ...told]);
  return Uint8Array.from(Buffer.concat([ascii('RIFF'), le32(body.length), body]));
}

import { crc32, deflateSync } from 'node:zlib';

export type Color = readonly [red: number, green: number, blue: number];
export type ColorWithAlpha = readonly [...Color, alpha: number];

/** Paints an opaque picture from a function of each pixel's place and returns it as a PNG of 8 bits per channel. */
export function paintPng(
  width: number,
  height: number,
  colorAt: (x: number, y: number) => Color,
): Uint8Array<ArrayBuffer> {
  return writePng({ width, height, channels: 3 }, colorAt);
}

/** The same with an alpha channel, 0 to 255. */
export function paintPngWithAlpha(
  width: number,
  height: number,
  colorAt: (x: number, y: number) => ColorWithAlpha,
): Uint8Array<ArrayBuffer> {
  return writePng({ width, height, channels: 4 }, colorAt);
}

interface PngFormat {
  readonly width: number;
  readonly height: number;
  readonly channels: 3 | 4;
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const BITS_PER_CHANNEL = 8;
/** Color types of the PNG standard (ISO/IEC 15948) by the number of channels. */
const COLOR_TYPES = { 3: 2, 4: 6 } as const;
const NO_FILTER = 0;

function writePng(
  { width, height, channels }: PngFormat,
  colorAt: (x: number, y: number) => readonly number[],
): Uint8Array<ArrayBuffer> {
  const rows = Buffer.alloc((width * channels + 1) * height);
  let at = 0;
  for (let y = 0; y < height; y += 1) {
    rows[at++] = NO_FILTER;
    for (let x = 0; x < width; x += 1) {
      for (const value of colorAt(x, y)) rows[at++] = clampByte(value);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([BITS_PER_CHANNEL, COLOR_TYPES[channels]], 8);
  return new Uint8Array(
    Buffer.concat([
      SIGNATURE,
      chunk('IHDR', header),
      chunk('IDAT', deflateSync(rows, { level: 4 })),
      chunk('IEND', Buffer.alloc(0)),
    ]),
  );
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  framed.set(body, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

function clampByte(value: number): number {
  return Math.max(0, Math.min(255, Math.round(value)));
}

/** Reads `#rrggbb`. */
export function colorFromHex(hex: string): Color {
  const channel = (start: number): number => Number.parseInt(hex.slice(start, start + 2), 16);
  return [channel(1), channel(3), channel(5)];
}

/** Lays `share` (0 to 1) of `over` on `under`. */
export function mix(under: Color, over: Color, share: number): Color {
  const part = Math.max(0, Math.min(1, share));
  return [
    under[0] + (over[0] - under[0]) * part,
    under[1] + (over[1] - under[1]) * part,
    under[2] + (over[2] - under[2]) * part,
  ];
}

export function lighten(color: Color, factor: number): Color {
  return [color[0] * factor, color[1] * factor, color[2] * factor];
}

import { crc32, deflateSync } from 'node:zlib';

export type Color = readonly [red: number, green: number, blue: number];

/** Paints a picture of `width` by `height` pixels from a function of each pixel's place and writes it as a PNG (24 bit). */
export function paintPng(
  width: number,
  height: number,
  colorAt: (x: number, y: number) => Color,
): Uint8Array<ArrayBuffer> {
  const rows = Buffer.alloc((width * 3 + 1) * height);
  let at = 0;
  for (let y = 0; y < height; y += 1) {
    rows[at++] = 0;
    for (let x = 0; x < width; x += 1) {
      const [red, green, blue] = colorAt(x, y);
      rows[at++] = clampByte(red);
      rows[at++] = clampByte(green);
      rows[at++] = clampByte(blue);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return new Uint8Array(
    Buffer.concat([
      signature,
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
  const value = Number.parseInt(hex.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}

/** `share` of `over` laid on `under`, 0 to 1. */
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

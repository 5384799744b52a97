import { ascii, startsWith } from './photo-type';

const SOI_BYTES = 2;
const EOI = 0xd9;
const SOS = 0xda;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP13 = 0xed;
const COMMENT = 0xfe;
const EXIF = ascii('Exif\0\0');
const MULTI_PICTURE = ascii('MPF\0');

/**
 * A JPEG (ITU-T T.81) without metadata about place, time and camera: Exif and XMP (APP1), editing records (APP13), comments, and
 * extra pictures after the end. The image data is copied byte for byte, and the orientation stays. Null if the JPEG is incomplete.
 */
export function cleanJpeg(bytes: Uint8Array): Uint8Array | null {
  const parts: Uint8Array[] = [bytes.subarray(0, SOI_BYTES)];
  let at = SOI_BYTES;
  for (;;) {
    while (bytes[at] === 0xff && bytes[at + 1] === 0xff) at += 1;
    const marker = bytes[at + 1];
    if (bytes[at] !== 0xff || marker === undefined) return null;
    if (marker === EOI) return join([...parts, bytes.subarray(at, at + 2)]);
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    const end = at + 2 + length;
    if (length < 2 || end > bytes.length) return null;
    const segment = bytes.subarray(at, end);
    if (!isPrivate(marker, segment)) parts.push(segment);
    else parts.push(orientationOnly(segment));
    at = end;
    if (marker === SOS) {
      const dataEnd = endOfScan(bytes, at);
      if (dataEnd === null) return null;
      parts.push(bytes.subarray(at, dataEnd));
      at = dataEnd;
    }
  }
}

function isPrivate(marker: number, segment: Uint8Array): boolean {
  if (marker === APP2) return startsWith(segment, 4, MULTI_PICTURE);
  return marker === APP1 || marker === APP13 || marker === COMMENT;
}

/** Inside a scan, FF 00 is data and RST0 to RST7 are part of the scan. Any other marker ends it. */
function endOfScan(bytes: Uint8Array, from: number): number | null {
  let at = from;
  for (;;) {
    at = bytes.indexOf(0xff, at);
    const next = at === -1 ? undefined : bytes[at + 1];
    if (next === undefined) return null;
    if (next === 0xff) at += 1;
    else if (next === 0x00 || (next >= 0xd0 && next <= 0xd7)) at += 2;
    else return at;
  }
}

/** An Exif segment with only the orientation; empty if the old segment has none or needs no turn. */
function orientationOnly(segment: Uint8Array): Uint8Array {
  if (!startsWith(segment, 4, EXIF)) return new Uint8Array(0);
  const orientation = orientationOf(segment.subarray(10));
  if (orientation === null || orientation === 1) return new Uint8Array(0);
  // A big-endian TIFF structure with one directory and one entry: the orientation, a 16-bit number.
  const tiff = bytesOfHex(`4d4d 002a 00000008 0001 0112 0003 00000001 000${orientation} 0000 00000000`);
  return Uint8Array.from([0xff, APP1, 0, 2 + EXIF.length + tiff.length, ...EXIF, ...tiff]);
}

function bytesOfHex(hex: string): Uint8Array {
  return Buffer.from(hex.replaceAll(' ', ''), 'hex');
}

/** Tag 0x0112 in the first directory of a TIFF structure, 1 to 8; null if it is missing. */
function orientationOf(tiff: Uint8Array): number | null {
  const isLittle = startsWith(tiff, 0, ascii('II'));
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  if (tiff.length < 14) return null;
  const directory = view.getUint32(4, isLittle);
  if (directory + 2 > tiff.length) return null;
  const count = view.getUint16(directory, isLittle);
  for (let index = 0; index < count; index += 1) {
    const entry = directory + 2 + index * 12;
    if (entry + 12 > tiff.length) return null;
    if (view.getUint16(entry, isLittle) !== 0x01_12) continue;
    const value = view.getUint16(entry + 8, isLittle);
    return value >= 1 && value <= 8 ? value : null;
  }
  return null;
}

export function join(parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(Buffer.concat(parts));
}

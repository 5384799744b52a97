import { join } from './jpeg-metadata';

const PNG_SIGNATURE_BYTES = 8;
const PRIVATE_PNG_CHUNKS = ['eXIf', 'tEXt', 'zTXt', 'iTXt', 'tIME'];

/** A PNG (ISO/IEC 15948) without Exif, texts and times. All other chunks are copied. Null if the file is incomplete. */
export function cleanPng(bytes: Uint8Array): Uint8Array | null {
  const parts: Uint8Array[] = [bytes.subarray(0, PNG_SIGNATURE_BYTES)];
  let at = PNG_SIGNATURE_BYTES;
  while (at + 12 <= bytes.length) {
    const end = at + 12 + view(bytes).getUint32(at);
    if (end > bytes.length) return null;
    const type = nameAt(bytes, at + 4);
    if (!PRIVATE_PNG_CHUNKS.includes(type)) parts.push(bytes.subarray(at, end));
    if (type === 'IEND') return join(parts);
    at = end;
  }
  return null;
}

const RIFF_HEADER_BYTES = 12;
const EXIF_AND_XMP_FLAGS = 0x08 | 0x04;

/** A WebP (RIFF container) without its EXIF and XMP chunks. Null if the file is incomplete. */
export function cleanWebp(bytes: Uint8Array): Uint8Array | null {
  const declared = view(bytes).getUint32(4, true) + 8;
  if (declared > bytes.length || declared < RIFF_HEADER_BYTES + 8) return null;
  const chunks: Uint8Array[] = [];
  let at = RIFF_HEADER_BYTES;
  while (at + 8 <= declared) {
    const size = view(bytes).getUint32(at + 4, true);
    // Chunks are padded to an even length.
    const end = at + 8 + size + (size % 2);
    if (end > declared) return null;
    const type = nameAt(bytes, at);
    const chunk = bytes.slice(at, end);
    if (type === 'VP8X') chunk[8] = (chunk[8] ?? 0) & ~EXIF_AND_XMP_FLAGS;
    if (type !== 'EXIF' && type !== 'XMP ') chunks.push(chunk);
    at = end;
  }
  const header = bytes.slice(0, RIFF_HEADER_BYTES);
  const cleaned = join([header, ...chunks]);
  view(cleaned).setUint32(4, cleaned.length - 8, true);
  return cleaned;
}

function nameAt(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

function view(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

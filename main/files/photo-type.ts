export type PhotoType = 'image/jpeg' | 'image/png' | 'image/webp';

const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** The type of a picture by its first bytes, whatever the file is called; null for anything else. */
export function photoTypeOf(bytes: Uint8Array): PhotoType | null {
  if (startsWith(bytes, 0, [0xff, 0xd8, 0xff])) return 'image/jpeg';
  if (startsWith(bytes, 0, PNG_SIGNATURE)) return 'image/png';
  if (startsWith(bytes, 0, ascii('RIFF')) && startsWith(bytes, 8, ascii('WEBP'))) return 'image/webp';
  return null;
}

export function ascii(text: string): readonly number[] {
  return Array.from(text, (character) => character.charCodeAt(0));
}

export function startsWith(bytes: Uint8Array, at: number, expected: readonly number[]): boolean {
  return expected.every((byte, index) => bytes[at + index] === byte);
}

/**
 * Packs a flat set of text files into an asar archive: sizes of a nested pickle, a JSON directory, then the contents.
 *
 * @param {Readonly<Record<string, string>>} files
 */
export function packAsar(files) {
  const contents = Object.entries(files).map(([name, text]) => ({ name, bytes: Buffer.from(text) }));
  let offset = 0;
  /** @type {Record<string, { size: number, offset: string }>} */
  const directory = {};
  for (const { name, bytes } of contents) {
    directory[name] = { size: bytes.length, offset: String(offset) };
    offset += bytes.length;
  }
  const json = Buffer.from(JSON.stringify({ files: directory }));
  const padded = Math.ceil(json.length / 4) * 4;
  const header = Buffer.alloc(16 + padded);
  header.writeUInt32LE(4, 0);
  header.writeUInt32LE(padded + 8, 4);
  header.writeUInt32LE(padded + 4, 8);
  header.writeUInt32LE(json.length, 12);
  json.copy(header, 16);
  return Buffer.concat([header, ...contents.map(({ bytes }) => bytes)]);
}

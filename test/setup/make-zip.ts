import zlib from 'node:zlib';

export interface ZipFile {
  readonly name: string;
  readonly text: string;
  readonly mode?: number;
  /** 0 keeps the bytes, 8 deflates them; any other is written down as it is. */
  readonly method?: number;
  /** The length that the directory claims, when it is to be a lie. */
  readonly claimedSize?: number;
}

/** Builds a zip archive from the published layout of its records, apart from the code that reads them. */
export function makeZip(files: readonly ZipFile[], comment = ''): Buffer {
  const bodies: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const { name, text, mode = 0o644, method = 8, claimedSize } of files) {
    const bytes = Buffer.from(text);
    const packed = method === 8 ? zlib.deflateRawSync(bytes) : bytes;
    const nameBytes = Buffer.from(name);
    // The extra field of the local header is longer than the directory's, as real archives have it.
    const localExtra = Buffer.from([0x55, 0x54, 0x01, 0x00, 0x00]);
    const local = Buffer.alloc(30);
    local.writeUInt32LE(0x04034b50, 0);
    local.writeUInt16LE(method, 8);
    local.writeUInt16LE(nameBytes.length, 26);
    local.writeUInt16LE(localExtra.length, 28);
    const body = Buffer.concat([local, nameBytes, localExtra, packed]);

    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(0x02014b50, 0);
    entry.writeUInt16LE(method, 10);
    entry.writeUInt32LE(packed.length, 20);
    entry.writeUInt32LE(claimedSize ?? bytes.length, 24);
    entry.writeUInt16LE(nameBytes.length, 28);
    entry.writeUInt32LE(((0o100000 | mode) << 16) >>> 0, 38);
    entry.writeUInt32LE(offset, 42);
    bodies.push(body);
    directory.push(entry, nameBytes);
    offset += body.length;
  }
  const listing = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(listing.length, 12);
  end.writeUInt32LE(offset, 16);
  end.writeUInt16LE(comment.length, 20);
  return Buffer.concat([...bodies, listing, end, Buffer.from(comment)]);
}

// Electron's executables carry a "wire" of switches after this mark: version, length, then one '0' or '1' each.
const sentinel = Buffer.from('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX');
const knownVersion = 1;

/** The fuses that set-up changes, by their place on the wire. */
export const fuse = { nodeCliInspect: 3, browserSnapshot: 6 };

/** @param {Buffer} executable */
function findWire(executable) {
  const mark = executable.indexOf(sentinel);
  if (mark < 0) throw new Error('no fuse wire in this executable');
  const start = mark + sentinel.length;
  const version = executable[start];
  if (version !== knownVersion) throw new Error(`fuse wire version ${version} is not known`);
  return { start: start + 2, length: executable[start + 1] ?? 0 };
}

/**
 * The fuse wire as text, one character a fuse.
 *
 * @param {Buffer} executable
 */
export function readFuses(executable) {
  const { start, length } = findWire(executable);
  return executable.toString('latin1', start, start + length);
}

/**
 * A copy of an executable with some fuses set; a fuse beyond the end of its wire is an error.
 *
 * @param {Buffer} executable
 * @param {readonly (readonly [place: number, on: boolean])[]} settings
 */
export function withFuses(executable, settings) {
  const { start, length } = findWire(executable);
  const changed = Buffer.from(executable);
  for (const [place, on] of settings) {
    if (place >= length) throw new Error(`this executable has no fuse ${place}`);
    changed.write(on ? '1' : '0', start + place, 'latin1');
  }
  return changed;
}

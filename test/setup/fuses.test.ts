import { describe, expect, test } from 'vitest';
import { fuse, readFuses, withFuses } from '#setup/fuses';

const mark = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

/** A made-up executable: code, the mark, version, length and wire, code. */
const executable = (wire: string, version = 1): Buffer =>
  Buffer.concat([
    Buffer.from('code'),
    Buffer.from(mark),
    Buffer.from([version, wire.length]),
    Buffer.from(`${wire}code`),
  ]);

describe('the fuses of an executable', () => {
  test('are read from the wire behind the mark', () => {
    expect(readFuses(executable('10100011'))).toBe('10100011');
  });

  test('change one by one, and nothing else does', () => {
    const before = executable('10100011');
    const after = withFuses(before, [
      [fuse.nodeCliInspect, true],
      [fuse.browserSnapshot, false],
    ]);
    expect(readFuses(after)).toBe('10110001');
    expect(after).toEqual(executable('10110001'));
    expect(before).toEqual(executable('10100011'));
  });

  test('are refused where the wire is too short, unknown or missing', () => {
    expect(() => withFuses(executable('101'), [[fuse.nodeCliInspect, true]])).toThrow('no fuse 3');
    expect(() => readFuses(executable('10100011', 2))).toThrow('version 2');
    expect(() => readFuses(Buffer.from('code'))).toThrow('no fuse wire');
  });
});

import { describe, expect, it } from 'vitest';
import { parseWanted } from '#core/stash/parse-wanted';
import { lengthFromInches as inches } from '#core/units/length';

describe('the patches a piece must be big enough for', () => {
  it('reads one size, a number of patches of one size, or several of these', () => {
    expect(parseWanted('12 x 18', 'in')).toEqual({
      ok: true,
      value: [{ width: inches(12), length: inches(18), count: 1 }],
    });
    expect(parseWanted('20 of 4 x 4 1/2; FQ;', 'in')).toEqual({
      ok: true,
      value: [
        { width: inches(4), length: inches(4.5), count: 20 },
        { width: inches(22), length: inches(18), count: 1 },
      ],
    });
  });

  it('names the size that cannot be read', () => {
    expect(parseWanted('', 'in')).toMatchObject({ ok: false, error: { code: 'empty' } });
    expect(parseWanted('12 x 18; a bit', 'in')).toMatchObject({ ok: false, error: { read: 'a bit' } });
    expect(parseWanted('18', 'in')).toMatchObject({ ok: false, error: { code: 'width-missing' } });
  });
});

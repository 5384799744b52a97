import { describe, expect, it } from 'vitest';
import { pairsAround } from '#core/geometry/around';

describe('the pairs around a polygon', () => {
  it('join each item with the next, and the last with the first', () => {
    const [a, b, c] = [{ name: 'a' }, { name: 'b' }, { name: 'c' }];
    expect(pairsAround([a, b, c])).toEqual([
      [a, b],
      [b, c],
      [c, a],
    ]);
    expect(pairsAround([a])).toEqual([[a, a]]);
    expect(pairsAround([])).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { freeOf } from '#core/domain/stash';

describe('the free fabric of a piece', () => {
  it('is what is there and not set aside', () => {
    expect(freeOf({ there: 100, held: 30 })).toBe(70);
  });

  it('is never negative, though a count may find less than is set aside', () => {
    expect(freeOf({ there: 10, held: 12 })).toBe(0);
  });

  it('includes what is set aside for the project that asks', () => {
    expect(freeOf({ there: 100, held: 90 }, 40)).toBe(50);
  });
});

import { describe, expect, it } from 'vitest';
import { leftoverSizes } from '#core/stash/leftover-sizes';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';

const inch = (side: number, pieces = 1) => ({ side: lengthFromInches(side), pieces, area: 10 * pieces });

describe('leftovers by size', () => {
  it('belong to the size that starts at their shorter side', () => {
    const sizes = leftoverSizes([inch(1), inch(2.5), inch(4.875, 3), inch(40)], 'inch');
    expect(sizes.map(({ pieces }) => pieces)).toEqual([1, 0, 4, 0, 0, 1]);
    expect(sizes[2]).toMatchObject({ from: lengthFromInches(2.5), below: lengthFromInches(5), area: 40 });
  });

  it('are each counted once in either unit system', () => {
    const sides = [5, 39.9, 40, 64, 65, 124, 250, 449, 450, 1_000].map((millimeters) => ({
      ...{ side: lengthFromMillimeters(millimeters), pieces: 1, area: 1 },
    }));
    for (const system of ['inch', 'metric'] as const) {
      const sizes = leftoverSizes(sides, system);
      expect(sizes.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(sides.length);
    }
    expect(leftoverSizes([], 'metric').map(({ pieces }) => pieces)).toEqual([0, 0, 0, 0, 0, 0]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate } from '#core/units/allocate';

const anyWeights = fc
  .array(fc.oneof(fc.nat(1000), fc.double({ min: 0, noNaN: true, noDefaultInfinity: true })), {
    minLength: 1,
    maxLength: 20,
  })
  .filter((weights) => weights.some((weight) => weight > 0));

describe('sharing out', () => {
  it.each<[number, number[], number[]]>([
    [10, [1, 1, 1], [4, 3, 3]],
    [100, [50, 30, 20], [50, 30, 20]],
    [7, [3, 0, 4], [3, 0, 4]],
    [1, [1, 2, 2], [0, 1, 0]],
    [-10, [1, 1, 1], [-4, -3, -3]],
    [0, [1, 5], [0, 0]],
    [7, [3, 5], [3, 4]],
    [2, [1, 1, 1, 5], [1, 0, 0, 1]],
    [5, [0.1, 0.2, 0.2], [1, 2, 2]],
    [3, [5e-324, 5e-324, 5e-324], [1, 1, 1]],
    [3, [1e308, 1e308, 5e-324], [2, 1, 0]],
    [Number.MAX_SAFE_INTEGER, [1, 1], [2 ** 52, 2 ** 52 - 1]],
  ])('%d by %j gives %j', (total, weights, shares) => {
    expect(allocate(total, weights)).toEqual(shares);
  });

  it('gives away exactly the total', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), anyWeights, (total, weights) => {
        const sum = allocate(total, weights).reduce((so, share) => so + BigInt(share), 0n);
        expect(sum).toBe(BigInt(total));
      }),
    );
  });

  it('is fair: no share is a whole unit off its exact part, and a greater weight never gets less', () => {
    fc.assert(
      fc.property(
        fc.nat(1_000_000),
        fc.array(fc.nat(1000), { minLength: 2, maxLength: 12 }),
        (total, weights) => {
          const sum = weights.reduce((so, weight) => so + weight, 0);
          fc.pre(sum > 0);
          const shares = allocate(total, weights);
          weights.forEach((weight, index) => {
            const share = shares[index] ?? NaN;
            expect(Math.abs(share * sum - total * weight)).toBeLessThan(sum);
            if (weight === 0) expect(share).toBe(0);
            weights.forEach((other, at) => {
              if (weight > other) expect(share).toBeGreaterThanOrEqual(shares[at] ?? NaN);
            });
          });
        },
      ),
    );
  });

  it('mirrors a negative total', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), anyWeights, (total, weights) => {
        const mirrored = allocate(-total, weights).map((share) => (share === 0 ? 0 : -share));
        expect(mirrored).toEqual(allocate(total, weights));
      }),
    );
  });

  it.each<[number, number[]]>([
    [1, []],
    [1, [0, 0]],
    [1, [1, -1]],
    [1, [1, NaN]],
    [1, [Infinity]],
    [1.5, [1]],
    [NaN, [1]],
    [2 ** 53, [1]],
  ])('refuses %d by %j', (total, weights) => {
    expect(() => allocate(total, weights)).toThrow(RangeError);
  });
});

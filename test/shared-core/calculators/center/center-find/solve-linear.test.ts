import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLinear } from '#core/calculators/center/center-find/solve-linear';

describe('linear equations', () => {
  it('have a solution that satisfies them, with rows in any order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 12, maxLength: 12 }),
        (numbers) => {
          const matrix = [numbers.slice(0, 3), numbers.slice(3, 6), numbers.slice(6, 9)];
          const solution = solveLinear(matrix, numbers.slice(9));
          if (solution === null) return;
          matrix.forEach((row, index) => {
            const sum = row.reduce((so, value, at) => so + value * solution[at]!, 0);
            expect(sum).toBeCloseTo(numbers[9 + index]!, 6);
          });
        },
      ),
    );
    expect(
      solveLinear(
        [
          [0, 1],
          [1, 0],
        ],
        [2, 3],
      ),
    ).toEqual([3, 2]);
  });

  it('have no solution if it is not unique', () => {
    expect(
      solveLinear(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeNull();
  });
});

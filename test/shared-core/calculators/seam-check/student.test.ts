import { describe, expect, it } from 'vitest';
import { scatterFactors, studentFactor } from '#core/calculators/seam-check/student';

describe('Student’s factor', () => {
  // Published: NIST-E, critical values of Student's t (2.5 % above).
  it.each([
    [1, 12.706],
    [2, 4.303],
    [3, 3.182],
    [4, 2.776],
    [5, 2.571],
    [10, 2.228],
    [15, 2.131],
    [24, 2.064],
    [30, 2.042],
    [40, 2.021],
  ])('for %i degrees of freedom is %f', (freedom, factor) => {
    expect(studentFactor(freedom)).toBeCloseTo(factor, 3);
  });

  it('falls with every further measurement, toward 1.96', () => {
    const factors = Array.from({ length: 200 }, (_, index) => studentFactor(index + 1));
    for (const [index, factor] of factors.entries()) {
      expect(factor).toBeGreaterThan(1.96);
      expect(factor).toBeLessThan(index === 0 ? 13 : factors[index - 1]!);
    }
    expect(factors[199]).toBeLessThan(1.98);
  });

  it('is the tangent of 0.95 · 90° for one degree of freedom and 0.95 · √(2 ÷ (1 − 0.95²)) for two (derived)', () => {
    expect(studentFactor(1)).toBeCloseTo(Math.tan((0.95 * Math.PI) / 2), 9);
    expect(studentFactor(2)).toBeCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)), 9);
  });
});

describe('the range of a scatter', () => {
  // Published: NIST-E, critical values of chi-square (2.5 % below and above).
  it.each([
    [1, 0.001, 5.024],
    [2, 0.051, 7.378],
    [5, 0.831, 12.833],
    [10, 3.247, 20.483],
    [30, 16.791, 46.979],
  ])('for %i degrees of freedom comes from %f and %f', (freedom, below, above) => {
    const { low, high } = scatterFactors(freedom);
    expect(freedom / low ** 2).toBeCloseTo(above, 3);
    expect(freedom / high ** 2).toBeCloseTo(below, 3);
  });

  it('is √(−1 ÷ ln 0.025) and √(−1 ÷ ln 0.975) for two degrees of freedom (derived)', () => {
    const { low, high } = scatterFactors(2);
    expect(low).toBeCloseTo(Math.sqrt(-1 / Math.log(0.025)), 9);
    expect(high).toBeCloseTo(Math.sqrt(-1 / Math.log(0.975)), 9);
  });
});

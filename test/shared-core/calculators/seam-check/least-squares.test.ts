import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { fitColumns, leftBeside } from '#core/calculators/seam-check/least-squares';

/** Solves the normal equations by Cramer's rule with whole fractions, so that nothing is rounded. */
function exactCoefficients(
  columns: readonly (readonly number[])[],
  off: readonly number[],
  weights: readonly Fraction[],
): readonly number[] {
  const product = (one: readonly number[], other: readonly number[]) =>
    weights.reduce((sum, weight, at) => sum.add(weight.mul(one[at]!).mul(other[at]!)), new Fraction(0));
  const square = columns.map((one) => columns.map((other) => product(one, other)));
  const right = columns.map((one) => product(one, off));
  const whole = determinant(square);
  return columns.map((_, at) =>
    determinant(square.map((row, line) => row.map((value, place) => (place === at ? right[line]! : value))))
      .div(whole)
      .valueOf(),
  );
}

function determinant(rows: readonly (readonly Fraction[])[]): Fraction {
  const [first, ...rest] = rows;
  if (first === undefined) return new Fraction(1);
  return first.reduce((sum, value, at) => {
    const minor = determinant(rest.map((row) => row.filter((_, place) => place !== at)));
    return at % 2 === 0 ? sum.add(value.mul(minor)) : sum.sub(value.mul(minor));
  }, new Fraction(0));
}

const unit = (at: number, length: number) => Array.from({ length }, (_, place) => (place === at ? 1 : 0));

const anyObservations = fc
  .array(
    fc.record({
      seams: fc.integer({ min: 0, max: 30 }),
      extra: fc.integer({ min: 1, max: 4 }),
      end: fc.integer({ min: -1, max: 1 }),
      off: fc.integer({ min: -3_000, max: 3_000 }),
    }),
    { minLength: 3, maxLength: 12 },
  )
  .map((rows) => ({
    columns: [
      rows.map(({ seams }) => -seams),
      rows.map(({ seams, extra }) => seams + extra),
      rows.map(({ seams, end }) => seams * end),
    ],
    off: rows.map(({ off }) => off),
    patches: rows.map(({ seams, extra }) => seams + extra),
  }));

describe('least squares', () => {
  // Published: NIST-R, data set NoInt1, certified values.
  it('agrees with the certified values for a line through zero', () => {
    const x = Array.from({ length: 11 }, (_, index) => 60 + index);
    const fit = fitColumns(
      [x],
      x.map((value) => value + 70),
      x.map(() => 1),
    );
    const deviation = Math.sqrt(fit.leftOver / fit.freedom);
    const { value, spread } = fit.sumOf([1]);
    expect(value).toBeCloseTo(2.074_380_165_289_26, 12);
    expect(deviation).toBeCloseTo(3.567_530_340_063_38, 11);
    expect(deviation * Math.sqrt(spread)).toBeCloseTo(0.016_528_925_619_834_7, 13);
  });

  it('agrees with the normal equations solved in whole fractions', () => {
    fc.assert(
      fc.property(anyObservations, ({ columns, off, patches }) => {
        const fit = fitColumns(
          columns,
          off,
          patches.map((count) => 1 / count),
        );
        fc.pre(fit.found.every(Boolean));
        const exact = exactCoefficients(
          columns,
          off,
          patches.map((count) => new Fraction(1, count)),
        );
        for (const [at, coefficient] of exact.entries()) {
          const { value } = fit.sumOf(unit(at, columns.length));
          expect(Math.abs(value - coefficient)).toBeLessThanOrEqual(
            1e-7 * Math.max(1, Math.abs(coefficient)),
          );
        }
      }),
    );
  });

  it('leaves less than any other coefficients near it, and finds the same by what is left of a column', () => {
    fc.assert(
      fc.property(anyObservations, fc.integer({ min: 0, max: 2 }), (drawn, changed) => {
        const { columns, off } = drawn;
        const weights = drawn.patches.map((count) => 1 / count);
        const fit = fitColumns(columns, off, weights);
        fc.pre(fit.found.every(Boolean));
        const best = columns.map((_, at) => fit.sumOf(unit(at, 3)).value);
        const leftBy = (coefficients: readonly number[]) =>
          off.reduce((sum, value, row) => {
            const said = coefficients.reduce((told, one, at) => told + one * columns[at]![row]!, 0);
            return sum + weights[row]! * (value - said) ** 2;
          }, 0);
        expect(fit.leftOver).toBeCloseTo(leftBy(best), 3);
        for (const step of [-1, 1]) {
          const other = best.map((value, at) => (at === changed ? value + step : value));
          expect(leftBy(other)).toBeGreaterThanOrEqual(leftBy(best) - 1e-6);
        }
        const left = leftBeside(
          columns[changed]!,
          columns.filter((_, at) => at !== changed),
          weights,
        );
        const sum = (with_: readonly number[]) =>
          weights.reduce((all, weight, row) => all + weight * left[row]! * with_[row]!, 0);
        expect(Math.abs(sum(off) / sum(left) - best[changed]!)).toBeLessThan(
          1e-6 * (1 + Math.abs(best[changed]!)),
        );
        expect(1 / sum(left)).toBeCloseTo(fit.sumOf(unit(changed, 3)).spread, 9);
      }),
    );
  });

  it('leaves out a column that is made of those before it, and an empty one', () => {
    const fit = fitColumns(
      [
        [2, 4, 6],
        [0, 0, 0],
        [1, 2, 3],
        [0, 1, 0],
      ],
      [2, 5, 6],
      [1, 1, 1],
    );
    expect(fit.found).toEqual([true, false, false, true]);
    expect(fit.freedom).toBe(1);
    expect(fit.sumOf([1, 7, 7, 0]).value).toBeCloseTo(1, 12);
    expect(fit.sumOf([0, 0, 0, 1]).value).toBeCloseTo(1, 12);
    expect(leftBeside([1, 2, 3], [[2, 4, 6]], [1, 1, 1])).toEqual([0, 0, 0]);
  });
});

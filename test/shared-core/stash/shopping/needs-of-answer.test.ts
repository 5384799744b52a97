import { describe, expect, test } from 'vitest';
import { answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { Measurements } from '#core/domain/measurements';
import { STARTING_HABITS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { answersThatCount, needsOfAnswer } from '#core/stash/shopping/needs-of-answer';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';

const ring: Measurements = {
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6) },
  hasSlit: false,
  settings: STARTING_HABITS,
};

/** What the answer of a calculator for a ring asks for, read from plain data as it is stored. */
function needsOf(name: string, measurements = ring) {
  const calculator = calculatorByName(name);
  if (calculator === undefined) throw new Error(`No ${name}`);
  const answer = answerCalculator(calculator, measurements, {});
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  const { input, calculation } = answer.value;
  const kept = JSON.parse(JSON.stringify({ input, details: calculation.details })) as object;
  return {
    calculation,
    needs: needsOfAnswer({ calculator: name, keptAt: 1, input: {}, details: {}, ...kept }, inches(42)),
  };
}

/** Length of fabric for the only need, before any extra, in inches. */
function fabricOf(name: string, measurements = ring): number {
  const [need, ...more] = needsOf(name, measurements).needs;
  if (need === undefined || more.length > 0) throw new Error('Not one need');
  return (lengthFor(need.amount, { width: need.fabricWidth, lies: 'any' }) ?? Number.NaN) / UNITS_PER_INCH;
}

describe('what a kept answer asks for', () => {
  test('is the fabric that the backing, the binding and the bias take', () => {
    // By hand: 50 + 2 x 4 = 58 in, two widths of 42 in. Strips of 2 1/2 in: (4 x 50 + 12 - 2.5) / 39.5 = 5.3, so six.
    expect(fabricOf('backing')).toBe(2 * 58);
    const square = { shape: 'rectangle', width: inches(50), length: inches(50) } as const;
    expect(fabricOf('outer-binding', { ...ring, outline: square })).toBe(6 * 2.5);
    const { calculation } = needsOf('continuous-bias');
    expect(calculation.details).toMatchObject({ squares: 1, side: inches(fabricOf('continuous-bias')) });
    expect(needsOf('inner-binding').needs).toMatchObject([{ fabricWidth: inches(42) }]);
  });

  test('is as much of each fabric as the top itself says', () => {
    const { needs, calculation } = needsOf('top');
    const { fabricLengths } = calculation.details as {
      fabricLengths: readonly { fabric: string; length: number }[];
    };
    expect(
      needs.map(({ name, amount, fabricWidth }) => [
        name,
        lengthFor(amount, { width: fabricWidth, lies: 'any' }),
      ]),
    ).toEqual(fabricLengths.map(({ fabric, length }) => [fabric, length]));
  });

  test('is a package of batting that covers, a piece of batting as large as the sheet being enough', () => {
    const [need] = needsOf('batting').needs;
    expect(need).toMatchObject({
      kind: 'batting-package',
      amount: { patches: [{ width: inches(58), length: inches(58), count: 1, mayTurn: true }] },
    });
    expect(need?.package?.width).toBeGreaterThanOrEqual(inches(58));
  });

  test('is thread by its length', () => {
    expect(needsOf('machine-thread').needs).toMatchObject([
      { kind: 'thread', amount: { measure: 'thread' } },
    ]);
    expect(needsOf('hand-finish').needs).toMatchObject([{ kind: 'thread' }]);
  });

  test('is nothing where it is no question of fabric, or can no longer be read', () => {
    expect(needsOf('center-clearance').needs).toEqual([]);
    const broken = { calculator: 'backing', input: {}, details: { ways: 'many' }, keptAt: 1 };
    expect(needsOfAnswer(broken, inches(42))).toEqual([]);
  });
});

test('of several answers to one question one counts: the whole top, and the way to a binding that was kept last', () => {
  const kept = ['patch-size', 'top', 'outer-binding', 'continuous-bias', 'hole-size', 'machine-thread'].map(
    (calculator, keptAt) => ({ calculator, keptAt }),
  );
  expect(answersThatCount(kept).map(({ calculator }) => calculator)).toEqual([
    'top',
    'continuous-bias',
    'machine-thread',
  ]);
});

import { describe, expect, test } from 'vitest';
import type { Calculator } from '#core/calculators/calculator';
import { answerCalculator } from '#core/calculators/complete-input';
import type { Figure, Quantity } from '#core/calculators/explanation';
import { calculatorByName, calculators } from '#core/calculators/registry';
import { answersThatCount, needsOfSavedAnswer, workOfSavedAnswer } from '#core/calculators/saved-answer';
import { yardageStepOfSettings } from '#core/calculators/shared-fields';
import type { Measurements } from '#core/domain/measurements';
import { isMetByItem, type Need } from '#core/domain/need';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { lengthFromExact, lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';

const ring: Measurements = {
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6) },
  hasSlit: false,
  settings: STARTING_SETTINGS,
};
const square: Measurements = {
  ...ring,
  outline: { shape: 'rectangle', width: inches(50), length: inches(50) },
};
const smallRing: Measurements = { ...ring, outline: { shape: 'circle', diameter: inches(14) } };

/** What an answer for a project asks for, read back as the store keeps it. */
function needsOf(calculator: Calculator, measurements: Measurements) {
  const answer = answerCalculator(calculator, measurements, {});
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  const { input, calculation } = answer.value;
  const stored: unknown = JSON.parse(JSON.stringify(input));
  const needs = needsOfSavedAnswer({ calculator: calculator.name, input: stored }, inches(42));
  return { input, calculation, needs };
}

function needsOfNamed(name: string, measurements = ring) {
  return needsOf(calculatorByName(name)!, measurements);
}

/** Length of fabric for the only need, before any extra, in inches. */
function fabricOf(name: string, measurements = ring): number {
  const [need, ...more] = needsOfNamed(name, measurements).needs;
  if (need === undefined || more.length > 0) throw new Error('Not one need');
  return (lengthFor(need.amount, { width: need.fabricWidth, turning: 'any' }) ?? Number.NaN) / UNITS_PER_INCH;
}

describe('what a saved answer asks for', () => {
  test('is the fabric that the backing, the binding and the bias take', () => {
    // By hand: 50 + 2 x 4 = 58 in, two widths of 42 in. Strips of 2 1/2 in: (4 x 50 + 12 - 2.5) / 39.5 = 5.3, so six.
    expect(fabricOf('backing')).toBe(2 * 58);
    expect(fabricOf('outer-binding', square)).toBe(6 * 2.5);
    const { calculation } = needsOfNamed('continuous-bias');
    expect(calculation.details).toMatchObject({ squares: 1, side: inches(fabricOf('continuous-bias')) });
  });

  test('is a square for the ring, from fabric of the usual width', () => {
    const { needs, calculation } = needsOfNamed('inner-binding');
    // By hand: 2π · 3 1/4 + 1 1/4 = 21.67 in. 8 1/2 in give 2 rows, 2 · 8 · √2 - 2 1/4 = 20.4; 9 in give 2 · 8 1/2 · √2 - 2 1/4 = 21.8.
    const { bias } = calculation.details as { readonly bias: { readonly width: number } };
    const side = inches(9);
    expect(bias.width).toBe(side);
    expect(needs).toMatchObject([
      {
        name: 'Inner binding',
        fabricWidth: inches(42),
        amount: { measure: 'patches', patches: [{ width: side, length: side, count: 1, mayTurn: true }] },
      },
    ]);
  });

  test('is one join less than strips for a binding, whatever the fabric that gives them', () => {
    // Derived: a diagonal join costs a strip's width. 212 in of strip from fabric 22 in wide: (212 - 2.5) / 19.5 = 10.7, so eleven.
    const [need] = needsOfNamed('outer-binding', square).needs;
    expect(need?.amount).toMatchObject({ measure: 'strips', cost: inches(2.5), needed: inches(212) });
    expect(lengthFor(need!.amount, { width: inches(22), turning: 'any' })).toBe(11 * inches(2.5));
  });

  test('is a package of batting that covers, a piece of batting as large as the sheet being enough', () => {
    const [need] = needsOfNamed('batting').needs;
    expect(need).toMatchObject({
      kind: 'batting-package',
      amount: { patches: [{ width: inches(58), length: inches(58), count: 1, mayTurn: true }] },
    });
    expect(need?.package?.width).toBeGreaterThanOrEqual(inches(58));
  });

  test('is nothing where the calculator asks for no fabric, is unknown, or no longer reads its input', () => {
    expect(needsOfNamed('center-clearance').needs).toEqual([]);
    expect(needsOfSavedAnswer({ calculator: 'backing', input: { outline: 'round' } }, inches(42))).toEqual(
      [],
    );
    expect(needsOfSavedAnswer({ calculator: 'no-such', input: {} }, inches(42))).toEqual([]);
    expect(workOfSavedAnswer({ calculator: 'top', input: null })).toEqual([]);
  });
});

describe('every calculator that buys', () => {
  /** It turns a pattern's yardage into another width. The answers of the stage ask for that fabric by its name already. */
  const WITHOUT_NEED = ['fabric-width'];
  /** The maker has the strips already. */
  const ONLY_WHAT_IS_MISSING = ['scrappy-binding'];
  const isYardage = ({ quantity }: Figure) => quantity.kind === 'length' && quantity.use === 'yardage';

  test.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
    '%s says what it needs where a figure of it is bought by length',
    (name, calculator) => {
      const { calculation } = needsOf(calculator, ring);
      if (!calculation.figures.some(isYardage) || WITHOUT_NEED.includes(name)) return;
      expect('needs' in calculator).toBe(true);
    },
  );

  const buyers = calculators.filter((calculator) => 'needs' in calculator);
  const cases = buyers.flatMap((calculator) =>
    Object.entries({ ring, square, smallRing }).map(([shape, it]) => [calculator.name, shape, it] as const),
  );

  test('are these, each with a folder of its own', () => {
    expect(buyers.map(({ name }) => name)).toEqual([
      'patch-size',
      'pattern-list',
      'fussy-cutting',
      'top',
      'wedge-ring',
      'long-strips',
      'backing',
      'batting',
      'quilting-thread',
      'outer-binding',
      'scrappy-binding',
      'slit-closure',
      'inner-binding',
      'continuous-bias',
      'bias-strips',
      'prairie-points',
      'piping',
      'facing',
      'ruffle',
      'hanging-sleeve',
      'hand-finish',
      'machine-thread',
    ]);
  });

  test.each(cases)('%s asks for what its figures say, for a %s', (name, _, measurements) => {
    const { needs, calculation, input } = needsOfNamed(name, measurements);
    const isNothingMissing = ONLY_WHAT_IS_MISSING.includes(name) && !calculation.figures.some(isYardage);
    expect(needs.length > 0).toBe(!isNothingMissing);
    for (const need of needs) {
      expect(figuresSay(calculation.figures, need, input as { readonly threadLength?: number })).toBe(true);
    }
  });
});

/** Whether a figure names the length to buy, the side of the only square, the least length, the package or the thread. */
function figuresSay(
  figures: readonly Figure[],
  need: Need,
  { threadLength = 1 }: { readonly threadLength?: number },
): boolean {
  const lengths = figures.flatMap(({ quantity }) => lengthsOf(quantity));
  if (need.package !== null) {
    return figures.some(({ quantity }) => quantity.kind === 'words' && quantity.text === need.package?.name);
  }
  if (isMetByItem(need.amount)) {
    const needlefuls = need.amount.length / threadLength;
    return (
      lengths.includes(lengthFromExact(need.amount.length, 'up')) ||
      figures.some(({ quantity }) => quantity.kind === 'count' && quantity.rounded === needlefuls)
    );
  }
  const exact = lengthFor(need.amount, { width: need.fabricWidth, turning: 'any' }) ?? Number.NaN;
  const step = yardageStepOfSettings(STARTING_SETTINGS);
  const toBuy = lengthFromExact(exact * (1 + need.extraPercent / 100), 'up', step);
  return lengths.includes(toBuy) || lengths.includes(lengthFromExact(exact, 'up'));
}

function lengthsOf(quantity: Quantity): readonly number[] {
  if (quantity.kind === 'size') return [quantity.width.rounded, quantity.length.rounded];
  return quantity.kind === 'length' ? [quantity.rounded] : [];
}

describe('of several answers of a stage', () => {
  const saved = (...names: readonly string[]) =>
    names.map((calculator, savedAt) => ({ calculator, savedAt }));
  const counted = (...names: readonly string[]) =>
    answersThatCount(saved(...names)).map(({ calculator }) => calculator);

  test('the whole top counts and not its single patches, whichever was saved first', () => {
    expect(counted('patch-size', 'top', 'machine-thread')).toEqual(['top', 'machine-thread']);
    expect(counted('top', 'patch-size')).toEqual(['top']);
    expect(counted('patch-size')).toEqual(['patch-size']);
  });

  test('the way to a binding that was saved last counts', () => {
    expect(counted('outer-binding', 'continuous-bias')).toEqual(['continuous-bias']);
    expect(counted('bias-strips', 'inner-binding', 'outer-binding')).toEqual(['outer-binding']);
  });

  test('an included calculator is one that exists', () => {
    const named = calculators.flatMap(({ includes }) => includes ?? []);
    expect(named.map((name) => calculatorByName(name)?.name)).toEqual(named);
  });
});

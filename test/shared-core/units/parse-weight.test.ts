import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatWeightForEditing, GRAMS_PER_OUNCE, GRAMS_PER_POUND } from '#core/units/format-weight';
import { parseWeight } from '#core/units/parse-weight';

const grams = (text: string, system: 'inch' | 'metric' = 'inch') => {
  const weight = parseWeight(text, system);
  return weight.ok ? weight.value : weight.error.code;
};

describe('a typed weight', () => {
  it.each([
    ['6 oz', 6 * GRAMS_PER_OUNCE],
    ['6oz', 6 * GRAMS_PER_OUNCE],
    ['1 lb', GRAMS_PER_POUND],
    ['1½ lb', 1.5 * GRAMS_PER_POUND],
    ['2 lbs 3 oz', 35 * GRAMS_PER_OUNCE],
    ['1 pound 1/2 ounce', 16.5 * GRAMS_PER_OUNCE],
    ['300 g', 300],
    ['1.2 kg', 1_200],
    ['1,5 kilos', 1_500],
    ['6 OZ.', 6 * GRAMS_PER_OUNCE],
  ])('%j is so many grams in either system', (text, expected) => {
    expect(grams(text)).toBeCloseTo(expected, 3);
    expect(grams(text, 'metric')).toBe(grams(text));
  });

  it('without a unit is in ounces or in grams', () => {
    expect(grams('10')).toBeCloseTo(10 * GRAMS_PER_OUNCE, 3);
    expect(grams('10', 'metric')).toBe(10);
  });

  it.each([
    ['', 'empty'],
    ['heavy', 'not-a-weight'],
    ['-6 oz', 'not-a-weight'],
    ['1 lb 2', 'not-a-weight'],
    ['1 lb 2 g', 'not-a-weight'],
    ['2 oz 1 lb', 'not-a-weight'],
    ['6 in', 'not-a-weight'],
    ['1/0 oz', 'not-a-weight'],
    ['1,250 g', 'ambiguous'],
    ['6 oz '.repeat(40), 'not-a-weight'],
  ])('%j is answered with %s', (text, code) => {
    expect(grams(text)).toBe(code);
  });

  it('offers both readings of a comma, and examples that it takes', () => {
    const comma = parseWeight('1,250 g', 'metric');
    expect(comma).toMatchObject({ ok: false, error: { expected: ['1250 g', '1.250 g'] } });
    for (const system of ['inch', 'metric'] as const) {
      const wrong = parseWeight('heavy', system);
      const examples = wrong.ok ? [] : wrong.error.expected;
      expect(examples.every((text) => parseWeight(text, system).ok)).toBe(true);
    }
  });
});

describe('a weight in a field', () => {
  it.each([
    [11 * GRAMS_PER_OUNCE, '11 oz', '311.845 g'],
    [35.5 * GRAMS_PER_OUNCE, '2 lb 3.5 oz', '1006.408 g'],
    [GRAMS_PER_POUND, '1 lb', '453.592 g'],
    [300, '300 g', '300 g'],
    [0, '0 oz', '0 g'],
  ])('of %d g is %s or %s', (weight, inch, metric) => {
    expect(formatWeightForEditing(weight, 'inch')).toBe(inch);
    expect(formatWeightForEditing(weight, 'metric')).toBe(metric);
  });

  it('is not changed by being shown and read again', () => {
    const anyGrams = fc.oneof(
      fc.integer({ min: 0, max: 20_000_000 }).map((thousandths) => thousandths / 1_000),
      fc.integer({ min: 0, max: 3_200 }).map((quarters) => {
        const read = parseWeight(`${String(quarters / 4)} oz`, 'inch');
        return read.ok ? read.value : Number.NaN;
      }),
    );
    fc.assert(
      fc.property(anyGrams, fc.constantFrom('inch', 'metric'), (weight, system) => {
        const again = parseWeight(formatWeightForEditing(weight, system), system);
        expect(again.ok && again.value).toBeCloseTo(weight, 6);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatExactWeight, formatWeight, GRAMS_PER_OUNCE, GRAMS_PER_POUND } from '#core/units/format-weight';

describe('a weight', () => {
  // From memory: the avoirdupois pound is 0.45359237 kg since 1959, sixteen ounces.
  it('of a pound is sixteen ounces and 453.59237 g', () => {
    expect(GRAMS_PER_POUND).toBeCloseTo(453.59237, 10);
    expect(formatWeight(GRAMS_PER_POUND, 'inch', 'up')).toBe('1 lb');
  });

  it.each([
    [0, '0 oz', '0 g'],
    [20, '1 oz', '20 g'],
    [28.4, '2 oz', '29 g'],
    [450, '1 lb', '450 g'],
    [999.2, '2 lb 4 oz', '1 kg'],
    [1_241, '2 lb 12 oz', '1.25 kg'],
    [4_263.8, '9 lb 7 oz', '4.27 kg'],
  ])('of %d g is written as %s or %s, rounded up', (grams, inch, metric) => {
    expect(formatWeight(grams, 'inch', 'up')).toBe(inch);
    expect(formatWeight(grams, 'metric', 'up')).toBe(metric);
  });

  it('is rounded as its direction says, and its exact value stands beside it', () => {
    expect(formatWeight(42, 'inch', 'nearest')).toBe('1 oz');
    expect(formatWeight(42, 'inch', 'down')).toBe('1 oz');
    expect(formatWeight(1_249, 'metric', 'down')).toBe('1.24 kg');
    expect(formatExactWeight(901.822, 'inch')).toBe('31.81 oz');
    expect(formatExactWeight(901.822, 'metric')).toBe('901.8 g');
  });

  it('read back is never less than it was, and less than an ounce or ten grams more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50_000, noNaN: true }), (grams) => {
        const inch = /^(?:(\d+) lb)? ?(?:(\d+) oz)?$/.exec(formatWeight(grams, 'inch', 'up'))!;
        const ounces = 16 * Number(inch[1] ?? 0) + Number(inch[2] ?? 0);
        expect(ounces * GRAMS_PER_OUNCE).toBeGreaterThanOrEqual(grams - 1e-3);
        expect(ounces * GRAMS_PER_OUNCE - grams).toBeLessThan(GRAMS_PER_OUNCE);
        const [number, unit] = formatWeight(grams, 'metric', 'up').split(' ');
        const read = Number(number) * (unit === 'kg' ? 1_000 : 1);
        expect(read).toBeGreaterThanOrEqual(grams - 1e-3);
        expect(read - grams).toBeLessThan(10.001);
      }),
    );
  });

  it('below zero or endless is none', () => {
    expect(() => formatWeight(-1, 'inch', 'up')).toThrow(RangeError);
    expect(() => formatWeight(Number.NaN, 'metric', 'up')).toThrow(RangeError);
  });
});

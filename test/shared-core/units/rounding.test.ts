import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RoundingDirection, roundDownTo, roundNearest, roundTo, roundUpTo } from '#core/units/rounding';

const anyValue = fc.double({ min: -1e9, max: 1e9, noNaN: true });
const anyStep = fc.constantFrom(1, 32, 127, 1016, 8128, 16000, 36576);
const DUST = 1e-6;

describe('rounding to a step', () => {
  it.each<[RoundingDirection, number, number, number]>([
    ['up', 8.001, 1, 9],
    ['up', 8, 1, 8],
    ['up', -8.5, 1, -8],
    ['down', 8.999, 1, 8],
    ['down', -8.5, 1, -9],
    ['nearest', 8.5, 1, 9],
    ['nearest', -8.5, 1, -9],
    ['nearest', 8.49, 1, 8],
    ['nearest', 190, 127, 127],
    ['nearest', 190.5, 127, 254],
    ['up', 1017, 1016, 2032],
    ['down', 2031, 1016, 1016],
  ])('rounds %s: %d by %d gives %d', (direction, value, step, expected) => {
    expect(roundTo(value, step, direction)).toBe(expected);
  });

  it('rounds up to at least the value, and by less than a step', () => {
    fc.assert(
      fc.property(anyValue, anyStep, (value, step) => {
        const rounded = roundUpTo(value, step);
        return rounded % step === 0 && rounded >= value - DUST && rounded < value + step;
      }),
    );
  });

  it('rounds down to at most the value, and by less than a step', () => {
    fc.assert(
      fc.property(anyValue, anyStep, (value, step) => {
        const rounded = roundDownTo(value, step);
        return rounded % step === 0 && rounded <= value + DUST && rounded > value - step;
      }),
    );
  });

  it('rounds to the nearest step, at most half a step away, and the same on both sides of zero', () => {
    fc.assert(
      fc.property(anyValue, anyStep, (value, step) => {
        const rounded = roundNearest(value, step);
        expect(rounded % step === 0 && Math.abs(rounded - value) <= step / 2 + DUST).toBe(true);
        expect(roundNearest(-value, step)).toBe(rounded === 0 ? 0 : -rounded);
      }),
    );
  });

  it('leaves a value that is on a step as it is, in every direction', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e5, max: 1e5 }), anyStep, (steps, step) => {
        const value = steps * step === 0 ? 0 : steps * step;
        for (const direction of ['up', 'down', 'nearest'] as const)
          expect(roundTo(value, step, direction)).toBe(value);
      }),
    );
  });

  it('moves any length that is off its step by even one unit, so no cut comes out too small', () => {
    expect(roundUpTo(8129, 8128)).toBe(16256);
    expect(roundDownTo(8127, 8128)).toBe(0);
  });

  it('takes the last bits of a computed number for dust', () => {
    expect(roundUpTo(Math.SQRT2 * Math.SQRT2, 1)).toBe(2);
    expect(roundDownTo(0.1 * 3 * 10 - 1e-9, 1)).toBe(3);
    expect(1.005 * 100).toBeLessThan(100.5);
    expect(roundNearest(1.005 * 100, 1)).toBe(101);
  });

  it('keeps dust in proportion to a step below one', () => {
    expect(roundUpTo(3.1e-7, 1e-7)).toBeCloseTo(4e-7, 15);
    expect(roundDownTo(3.9e-7, 1e-7)).toBeCloseTo(3e-7, 15);
  });

  it('keeps whole numbers too large to have a half', () => {
    expect(roundNearest(2 ** 52 + 1, 1)).toBe(2 ** 52 + 1);
    expect(roundNearest(Number.MAX_SAFE_INTEGER, 1)).toBe(Number.MAX_SAFE_INTEGER);
  });

  it('never gives a negative zero', () => {
    expect(roundUpTo(-0.5, 1)).toBe(0);
    expect(roundDownTo(-0, 1)).toBe(0);
    expect(roundNearest(-0.2, 1)).toBe(0);
  });

  it.each([NaN, Infinity, -Infinity])('refuses to round %d', (value) => {
    for (const direction of ['up', 'down', 'nearest'] as const) {
      expect(() => roundTo(value, 1, direction)).toThrow(RangeError);
    }
  });

  it.each([0, -1, NaN, Infinity])('refuses a step of %d', (step) => {
    for (const direction of ['up', 'down', 'nearest'] as const) {
      expect(() => roundTo(1, step, direction)).toThrow(RangeError);
    }
  });

  it('refuses a quotient too large to be a number', () => {
    expect(() => roundUpTo(1e308, 1e-3)).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatExactLength,
  formatLength,
  formatLengthForEditing,
  formatYardage,
  type LengthParts,
  lengthParts,
  yardageStep,
} from '#core/units/format-length';
import { lengthFromInches, lengthFromMillimeters, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { UNITS_PER } from '#core/units/length-unit';
import { parseSignedLength } from '#core/units/parse-length';
import type { RoundingDirection } from '#core/units/rounding';
import { displayStep, INCH_STEPS, type InchStep, type LengthDisplay } from '#core/units/unit-system';
import { anyDisplay, anyLengthUnit, anyRounding, anySignedLength } from '#test/helpers/arbitraries';

const inch = (inchStep: InchStep): LengthDisplay => ({ system: 'inch', inchStep });
const METRIC: LengthDisplay = { system: 'metric', inchStep: 8 };

/** Far enough from the largest length to be rounded up and still be one. */
const anyFabricLength = fc.integer({ min: -999 * UNITS_PER.m, max: 999 * UNITS_PER.m }).map(lengthFromUnits);

describe('a length in inches', () => {
  it.each<[number, InchStep, string]>([
    [0, 8, '0 in'],
    [9.5, 8, '9½ in'],
    [0.5, 8, '½ in'],
    [9.25, 8, '9¼ in'],
    [9.75, 8, '9¾ in'],
    [0.125, 8, '⅛ in'],
    [3.375, 8, '3⅜ in'],
    [3.625, 8, '3⅝ in'],
    [12.875, 8, '12⅞ in'],
    [9.8125, 16, '9 13/16 in'],
    [0.8125, 16, '13/16 in'],
    [9.046875, 64, '9 3/64 in'],
    [9.03125, 32, '9 1/32 in'],
    [9.999, 8, '10 in'],
    [9.9, 4, '10 in'],
    [-2.25, 8, '−2¼ in'],
    [-0.01, 8, '0 in'],
  ])('of %d to 1/%d is %s', (inches, step, text) => {
    expect(formatLength(lengthFromInches(inches), inch(step))).toBe(text);
  });

  it.each<[RoundingDirection, string]>([
    ['up', '17 in'],
    ['nearest', '17 in'],
    ['down', '16⅞ in'],
  ])('is rounded %s where that is asked', (rounding, text) => {
    expect(formatLength(lengthFromInches(16.97), inch(8), rounding)).toBe(text);
  });
});

describe('a metric length', () => {
  it.each<[number, string]>([
    [0, '0 mm'],
    [7.5, '7.5 mm'],
    [6.35, '6.5 mm'],
    [19.9, '20 mm'],
    [20, '2 cm'],
    [24, '2.4 cm'],
    [240, '24 cm'],
    [241.3, '24.1 cm'],
    [-241.3, '−24.1 cm'],
    // NIST LC 1137: do not over-report; 36 in is 91 cm, not 91.44 cm. Here the ruler's millimeter is the last place.
    [914.4, '91.4 cm'],
    [1250, '125 cm'],
  ])('of %d mm is %s', (millimeters, text) => {
    expect(formatLength(lengthFromMillimeters(millimeters), METRIC)).toBe(text);
  });

  it('is rounded up to the millimeter for a cut', () => {
    expect(formatLength(lengthFromMillimeters(241.01), METRIC, 'up')).toBe('24.2 cm');
  });
});

describe('the parts of a length', () => {
  it('are whole, numerator and denominator for typesetting', () => {
    expect(lengthParts(lengthFromInches(9.8), inch(16), 'nearest')).toEqual({
      sign: '',
      whole: 9,
      numerator: 13,
      denominator: 16,
      unit: 'in',
      isExact: false,
    });
    expect(lengthParts(lengthFromMillimeters(-241), METRIC)).toEqual({
      sign: '−',
      whole: 24,
      numerator: 1,
      denominator: 10,
      decimal: '24.1',
      unit: 'cm',
      isExact: true,
    });
  });

  it('add up to the length rounded to the step, in the safe direction, and say whether it was rounded', () => {
    fc.assert(
      fc.property(anySignedLength, anyDisplay, anyRounding, (length, display, rounding) => {
        const parts = lengthParts(length, display, rounding);
        const units = unitsOf(parts);
        expect(parts.isExact).toBe(units === length);
        expect(Math.abs(units - length)).toBeLessThan(displayStep(display));
        if (rounding === 'up') expect(units).toBeGreaterThanOrEqual(length);
        if (rounding === 'down') expect(units).toBeLessThanOrEqual(length);
        if (rounding === 'nearest')
          expect(Math.abs(units - length)).toBeLessThanOrEqual(displayStep(display) / 2);
        expect(parts.numerator).toBeLessThan(parts.denominator);
      }),
      { numRuns: 2000 },
    );
  });
});

function unitsOf({ sign, whole, numerator, denominator, unit }: LengthParts): number {
  const size = whole * UNITS_PER[unit] + (numerator * UNITS_PER[unit]) / denominator;
  return sign === '' ? size : -size;
}

describe('reading back what was written', () => {
  it('gives the identical length from editing text, whatever the field takes a bare number for', () => {
    fc.assert(
      fc.property(anySignedLength, anyDisplay, anyLengthUnit, (length, display, bareUnit) => {
        const text = formatLengthForEditing(length, display);
        expect(parseSignedLength(text, bareUnit)).toEqual({ ok: true, value: length });
      }),
      { numRuns: 5000 },
    );
  });

  it('gives the identical length from editing text for each unit of the first two inches', () => {
    for (let units = 0; units <= 2 * UNITS_PER_INCH; units += 1) {
      const length = lengthFromUnits(units);
      for (const display of [inch(8), METRIC]) {
        const back = parseSignedLength(formatLengthForEditing(length, display), 'yd');
        if (!back.ok || back.value !== length)
          expect.fail(`${units}: ${formatLengthForEditing(length, display)}`);
      }
    }
  });

  it.each<[number, LengthDisplay, string]>([
    [9.5 * UNITS_PER_INCH, inch(8), '9 1/2 in'],
    [UNITS_PER_INCH / 2, inch(8), '1/2 in'],
    [127, inch(8), '1/64 in'],
    [-127 * 66, inch(4), '-1 1/32 in'],
    [2709, inch(8), '8.466 mm'],
    [1, inch(8), '0.003 mm'],
    [0, inch(8), '0 in'],
    [2400, METRIC, '7.5 mm'],
    [76_800, METRIC, '24 cm'],
    [77_216, METRIC, '24.13 cm'],
    [76_801, METRIC, '24.0003 cm'],
    [-320, METRIC, '-1 mm'],
  ])('%d units are put into a field as short as they can be', (units, display, text) => {
    expect(formatLengthForEditing(lengthFromUnits(units), display)).toBe(text);
  });

  it('gives the rounded length from display text, of which it is a fixed point', () => {
    fc.assert(
      fc.property(anyFabricLength, anyDisplay, anyRounding, (length, display, rounding) => {
        const text = formatLength(length, display, rounding);
        const back = parseSignedLength(text, 'm');
        if (!back.ok) return expect.fail(text);
        expect(back.value).toBe(unitsOf(lengthParts(length, display, rounding)));
        for (const again of ['up', 'down', 'nearest'] as const) {
          const lasting = parseSignedLength(formatLength(back.value, display, again), 'm');
          expect(lasting).toEqual(back);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('gives one length from an inch text and its metric text, where both can write it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 7_000 }), (fives) => {
        const length = lengthFromInches(fives * 5);
        const [a, b] = [formatLength(length, inch(8)), formatLength(length, METRIC)];
        expect(parseSignedLength(a, 'm')).toEqual(parseSignedLength(b, 'm'));
      }),
    );
  });
});

describe('fabric to buy', () => {
  it.each<[number, string]>([
    [0, '0 yd'],
    [0.01, '⅛ yd'],
    [45, '1¼ yd'],
    [45.001, '1⅜ yd'],
    [36, '1 yd'],
    [-45, '−1¼ yd'],
  ])('%d in are %s', (inches, text) => {
    expect(formatYardage(lengthFromInches(inches), inch(8))).toBe(text);
  });

  it.each<[number, string]>([
    [1250, '1.25 m'],
    [1250.1, '1.30 m'],
    [1, '0.05 m'],
    [3000, '3.00 m'],
  ])('%d mm are %s', (millimeters, text) => {
    expect(formatYardage(lengthFromMillimeters(millimeters), METRIC)).toBe(text);
  });

  it('is always enough, and by less than one step too much', () => {
    fc.assert(
      fc.property(anyFabricLength, anyDisplay, (length, display) => {
        const bought = parseSignedLength(formatYardage(length, display), 'mm');
        if (!bought.ok) return expect.fail(bought.error.read);
        expect(bought.value).toBeGreaterThanOrEqual(length);
        expect(bought.value - length).toBeLessThan(yardageStep(display));
      }),
    );
  });
});

describe('a computed length in an explanation', () => {
  it('has four decimals of an inch or three of a centimeter, and no zeros behind', () => {
    const diagonal = 12 * Math.SQRT2 * UNITS_PER_INCH;
    expect(formatExactLength(diagonal, inch(8))).toBe('16.9706 in');
    expect(formatExactLength(diagonal, METRIC)).toBe('43.105 cm');
    expect(formatExactLength(diagonal / 250, METRIC)).toBe('1.72 mm');
    expect(formatExactLength(-9.5 * UNITS_PER_INCH, inch(8))).toBe('−9.5 in');
    expect(formatExactLength(-1e-9, inch(8))).toBe('0 in');
    expect(formatExactLength(100 * UNITS_PER_INCH, inch(8))).toBe('100 in');
    expect(() => formatExactLength(NaN, METRIC)).toThrow(RangeError);
  });
});

describe('the ruler step', () => {
  it('is a fraction of an inch in whole units, or a millimeter', () => {
    expect(INCH_STEPS.map((step) => displayStep(inch(step)))).toEqual([2032, 1016, 508, 254, 127]);
    expect(displayStep(METRIC)).toBe(320);
  });
});

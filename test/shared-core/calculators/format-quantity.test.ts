import { describe, expect, it } from 'vitest';
import {
  formatExactQuantity,
  formatInline,
  formatQuantity,
  formatSentence,
  type QuantityStyle,
} from '#core/calculators/format-quantity';
import {
  areaQuantity,
  countQuantity,
  degreesQuantity,
  fineLength,
  givenLength,
  lengthQuantity,
  minutesQuantity,
  moneyQuantity,
  numberQuantity,
  percentQuantity,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import type { Quantity } from '#core/calculators/explanation';
import { lengthFromInches, UNITS_PER_INCH, UNITS_PER_YARD } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

const inch: QuantityStyle = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
};
const metric: QuantityStyle = {
  display: { system: 'metric', inchStep: 8 },
  currency: currencyFromCode('EUR'),
  locale: 'en-IE',
};

const EIGHTH = UNITS_PER_INCH / 8;
const diagonal = 9 * Math.SQRT2 * UNITS_PER_INCH;

describe('writing a quantity', () => {
  it.each<[Quantity, string, string | null]>([
    [givenLength(lengthFromInches(9.5)), '9½ in', null],
    [lengthQuantity(diagonal, { step: EIGHTH, direction: 'up' }), '12¾ in', '12.7279 in'],
    [
      lengthQuantity(1.3 * UNITS_PER_YARD, { step: UNITS_PER_YARD / 8, direction: 'up', use: 'yardage' }),
      '1⅜ yd',
      '46.8 in',
    ],
    [fineLength(0.1083 * UNITS_PER_INCH, 'up'), '7/64 in', '0.1083 in'],
    [fineLength(0.2, 'nearest'), '0 in', null],
    [givenLength(lengthFromInches(1 / 32), 'fine'), '1/32 in', null],
    [lengthQuantity(18.75 * UNITS_PER_INCH + 0.1, { direction: 'nearest' }), '18¾ in', null],
    [lengthQuantity(28.0903 * UNITS_PER_INCH, { direction: 'nearest' }), '28⅛ in', '28.0903 in'],
    [sizeQuantity(givenLength(lengthFromInches(9.5)), givenLength(lengthFromInches(12))), '9½ × 12 in', null],
    [
      sizeQuantity(
        lengthQuantity(diagonal, { step: EIGHTH, direction: 'up' }),
        givenLength(lengthFromInches(3)),
      ),
      '12¾ × 3 in',
      '12.7279 × 3 in',
    ],
    [countQuantity(6.2, ['strip', 'strips'], 'up'), '7 strips', '6.2'],
    [countQuantity(1, ['strip', 'strips']), '1 strip', null],
    [countQuantity(0, ['strip', 'strips']), '0 strips', null],
    [areaQuantity(144 * UNITS_PER_INCH ** 2), '144 sq in', null],
    [percentQuantity(12.34), '12.3%', null],
    [percentQuantity(-2.857), '−2.9%', null],
    [moneyQuantity(1907.6), '$19.08', null],
    [moneyQuantity(10030.035), '$100.30', null],
    [moneyQuantity(-500), '-$5.00', null],
    [minutesQuantity(139.2), '2 h 20 min', '139.2'],
    [minutesQuantity(45), '45 min', null],
    [degreesQuantity(45), '45°', null],
    [degreesQuantity(25.714), '25.7°', null],
    [degreesQuantity(-0.125), '−0.13°', null],
    [degreesQuantity(1.1018), '1.1°', null],
    [numberQuantity(2.5), '2.5', null],
    [numberQuantity(Math.SQRT2), '1.4142', null],
    [wordsQuantity('comfortable'), 'comfortable', null],
  ])('writes %j as %s', (quantity, rounded, exact) => {
    expect(formatQuantity(quantity, inch)).toBe(rounded);
    expect(formatExactQuantity(quantity, inch)).toBe(exact);
  });

  it('writes in metric units and another currency', () => {
    expect(formatQuantity(lengthQuantity(76_543, { step: 320, direction: 'up' }), metric)).toBe('24 cm');
    expect(
      formatQuantity(
        lengthQuantity(1.31 * 320_000, { step: 16_000, direction: 'up', use: 'yardage' }),
        metric,
      ),
    ).toBe('1.35 m');
    expect(formatQuantity(moneyQuantity(1907.6), metric)).toBe('€19.08');
    expect(
      formatQuantity(
        sizeQuantity(givenLength(lengthFromInches(0.25)), givenLength(lengthFromInches(12))),
        metric,
      ),
    ).toBe('6.5 mm × 30.48 cm');
  });

  it('writes a fine length to a tenth of a millimeter in metric units', () => {
    expect(formatQuantity(fineLength(2.43 * 320, 'up'), metric)).toBe('2.5 mm');
    expect(formatQuantity(fineLength(2.43 * 320, 'down'), metric)).toBe('2.4 mm');
    expect(formatQuantity(fineLength(241.27 * 320, 'down'), metric)).toBe('24.12 cm');
    expect(formatQuantity(fineLength(-2.43 * 320, 'nearest'), metric)).toBe('−2.4 mm');
  });

  it('rounds in the same direction if the reader sees coarser steps', () => {
    const quarter: QuantityStyle = { ...inch, display: { system: 'inch', inchStep: 4 } };
    expect(formatQuantity(lengthQuantity(lengthFromInches(2.0625), { direction: 'up' }), quarter)).toBe(
      '2¼ in',
    );
    expect(formatQuantity(lengthQuantity(lengthFromInches(2.1875), { direction: 'down' }), quarter)).toBe(
      '2 in',
    );
    expect(formatQuantity(lengthQuantity(lengthFromInches(2.1875), { direction: 'nearest' }), quarter)).toBe(
      '2¼ in',
    );
    expect(formatQuantity(givenLength(lengthFromInches(2.0625)), quarter)).toBe('2 1/16 in');
  });

  it('writes a setting for the ruler in the maker’s own step, where that is finer than the reader’s', () => {
    const sixteenth = { step: UNITS_PER_INCH / 16, direction: 'down' } as const;
    const setting = lengthQuantity(3.2 * UNITS_PER_INCH, sixteenth);
    expect([formatQuantity(setting, inch), formatExactQuantity(setting, inch)]).toEqual([
      '3 3/16 in',
      '3.2 in',
    ]);
    const bought = lengthQuantity(8 * UNITS_PER_INCH, { ...sixteenth, use: 'yardage', step: UNITS_PER_INCH });
    expect([formatQuantity(bought, inch), formatExactQuantity(bought, inch)]).toEqual(['8 in', null]);
  });

  it('writes an exact value beside every length that the printed step changes', () => {
    const whole = lengthQuantity(lengthFromInches(9.0625), { direction: 'up' });
    expect([formatQuantity(whole, inch), formatExactQuantity(whole, inch)]).toEqual(['9⅛ in', '9.0625 in']);
  });

  it('writes finer where no exact value stands beside it and the step is too coarse, in the same direction', () => {
    const quantity = (inches: number, direction: 'up' | 'down' | 'nearest') =>
      lengthQuantity(inches * UNITS_PER_INCH, { direction });
    expect(formatInline(quantity(0.0625, 'down'), inch)).toBe('1/16 in');
    expect(formatInline(quantity(0.0625, 'up'), inch)).toBe('1/16 in');
    expect(formatInline(quantity(28.0903, 'nearest'), inch)).toBe('28 3/32 in');
    expect(formatInline(quantity(28.13, 'nearest'), inch)).toBe('28⅛ in');
    expect(formatInline(sizeQuantity(quantity(3.07, 'up'), quantity(4, 'up')), inch)).toBe('3 5/64 × 4 in');
    expect(formatInline(fineLength(0.11 * UNITS_PER_INCH, 'up'), inch)).toBe('⅛ in');
    expect(formatInline(countQuantity(2, ['strip', 'strips']), inch)).toBe('2 strips');
  });

  it('writes the unit of a size once, after mixed numbers too', () => {
    const sixteenths: QuantityStyle = { ...inch, display: { system: 'inch', inchStep: 16 } };
    const size = sizeQuantity(givenLength(lengthFromInches(9.0625)), givenLength(lengthFromInches(12.0625)));
    expect(formatQuantity(size, sixteenths)).toBe('9 1/16 × 12 1/16 in');
  });

  it('writes both units of a size if its sides have different ones', () => {
    const size = sizeQuantity(givenLength(lengthFromInches(12)), givenLength(lengthFromInches(0.25)));
    expect(formatQuantity(size, metric)).toBe('30.48 cm × 6.5 mm');
  });

  it('throws for a kind of quantity it does not know', () => {
    const unknown = { kind: 'volume', exact: 1 } as unknown as Quantity;
    expect(() => formatQuantity(unknown, inch)).toThrow('volume');
    expect(() => formatExactQuantity(unknown, inch)).toThrow('volume');
  });

  it('puts quantities into a sentence by name', () => {
    const values = {
      ring: givenLength(lengthFromInches(6.5)),
      strips: countQuantity(2, ['strip', 'strips']),
    };
    expect(formatSentence({ says: '{strips} go round {ring}; {strips}!', values }, inch)).toBe(
      '2 strips go round 6½ in; 2 strips!',
    );
    expect(() => formatSentence({ says: '{toString}', values }, inch)).toThrow(RangeError);
  });
});

describe('making a quantity', () => {
  it('keeps the exact value, the rounded one and the direction', () => {
    expect(lengthQuantity(100.4, { direction: 'up' })).toEqual({
      kind: 'length',
      exact: 100.4,
      rounded: 101,
      rounding: 'up',
      use: 'size',
    });
    expect(lengthQuantity(100.6, { direction: 'down', step: 10, use: 'yardage' })).toMatchObject({
      rounded: 100,
      use: 'yardage',
    });
    expect(givenLength(lengthFromInches(1))).toMatchObject({
      exact: 8_128,
      rounded: 8_128,
      rounding: 'none',
    });
    expect(countQuantity(2.5, ['a', 'b'])).toMatchObject({ exact: 2.5, rounded: 3 });
    expect(countQuantity(2.5, ['a', 'b'], 'down').rounded).toBe(2);
    expect(moneyQuantity(10.5)).toMatchObject({ exact: 10.5, rounded: 11 });
    expect(moneyQuantity(10.2, 'up').rounded).toBe(11);
    expect(minutesQuantity(10.01).rounded).toBe(11);
    expect(minutesQuantity(10.01, 'nearest').rounded).toBe(10);
  });

  it('refuses numbers that are not finite', () => {
    expect(() => lengthQuantity(NaN, { direction: 'up' })).toThrow(RangeError);
    expect(() => lengthQuantity(1e300, { direction: 'up' })).toThrow(RangeError);
    expect(() => moneyQuantity(Infinity)).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  type Length,
  UNITS_PER_INCH,
  UNITS_PER_METER,
  UNITS_PER_MILLIMETER,
  UNITS_PER_YARD,
} from '#core/units/length';
import { type LengthUnit, UNITS_PER } from '#core/units/length-unit';
import { parseLength, parseSignedLength } from '#core/units/parse-length';
import { MALFORMED_LENGTHS } from '#test/fixtures/malformed-lengths';
import { anyLengthUnit } from '#test/helpers/arbitraries';

function read(text: string, bareUnit: LengthUnit = 'in'): Length {
  const length = parseLength(text, bareUnit);
  if (!length.ok) throw new Error(`${text}: ${JSON.stringify(length.error)}`);
  return length.value;
}

const NINE_AND_A_HALF = 9.5 * UNITS_PER_INCH;

describe('typed lengths', () => {
  it.each([
    '9 1/2',
    '9-1/2',
    '9-1/2"',
    '9 1/2"',
    '9 1/2 in',
    '9 1/2in.',
    '9½',
    '9 ½',
    '9-½',
    '9 ½ in',
    '9½″',
    '9½ ″',
    '9½”',
    "9½''",
    '9½′′',
    '9 1⁄2',
    '9 ¹⁄₂',
    '9¹⁄₂',
    '9¹/₂ in',
    '9\u20131/2',
    '9.5',
    '9.50',
    '9,5',
    '9.5 in',
    '9.5 inches',
    ' 9.5 IN ',
    '9.5\u00a0in',
    '09.5',
    '19/2',
    '19 / 2',
    '9 16/32',
    '９.５ in',
    '9.5in',
  ])('%s is nine and a half inches', (text) => {
    expect(read(text)).toBe(NINE_AND_A_HALF);
  });

  it.each<[string, number]>([
    ['24 cm', 240 * UNITS_PER_MILLIMETER],
    ['24cm', 240 * UNITS_PER_MILLIMETER],
    ['9,5 cm', 95 * UNITS_PER_MILLIMETER],
    ['240mm', 240 * UNITS_PER_MILLIMETER],
    ['7.5 millimeters', 2400],
    ['7.5 millimeters', 2400],
    ['1.25 m', 1.25 * UNITS_PER_METER],
    ['0,250 m', UNITS_PER_METER / 4],
    ['1,2505 m', 400_160],
    ['1250,125 mm', 400_040],
    ['1 m 20 cm', 1.2 * UNITS_PER_METER],
    ['1 m 20 cm 5 mm', 1205 * UNITS_PER_MILLIMETER],
    ['3 ㎝', 30 * UNITS_PER_MILLIMETER],
    ['1 1/4 yd', 45 * UNITS_PER_INCH],
    ['1¼ yards', 45 * UNITS_PER_INCH],
    ['⅓ yd', 12 * UNITS_PER_INCH],
    ['2 yd 9 in', 81 * UNITS_PER_INCH],
    ['2 yds. 9 1/2 in.', 81.5 * UNITS_PER_INCH],
    ['2yd9in', 81 * UNITS_PER_INCH],
    ['1 yd 1 ft 1 in', 49 * UNITS_PER_INCH],
    [`5'6"`, 66 * UNITS_PER_INCH],
    ['5’ 6 ½”', 66.5 * UNITS_PER_INCH],
    ['3 feet', 36 * UNITS_PER_INCH],
    ['1/64', 127],
    ['0.1 mm', 32],
    ['0', 0],
    ['.5', UNITS_PER_INCH / 2],
    ['5.', 5 * UNITS_PER_INCH],
    ['1.250 m', 1.25 * UNITS_PER_METER],
    ['10000 m', 10_000 * UNITS_PER_METER],
  ])('%s is %d units', (text, units) => {
    expect(read(text)).toBe(units);
  });

  it.each<[LengthUnit, number]>([
    ['in', UNITS_PER_INCH],
    ['ft', 12 * UNITS_PER_INCH],
    ['yd', UNITS_PER_YARD],
    ['mm', UNITS_PER_MILLIMETER],
    ['cm', 10 * UNITS_PER_MILLIMETER],
    ['m', UNITS_PER_METER],
  ])('a bare number in a field of %s counts in it', (unit, units) => {
    expect(read('2.5', unit)).toBe(2.5 * units);
    expect(read('2.5 in', unit)).toBe(2.5 * UNITS_PER_INCH);
  });

  it('off the grid come to the nearest unit: a third of an inch is less than 1/640 mm off', () => {
    expect(read('1/3')).toBe(2709);
    expect(read('2/3')).toBe(5419);
  });

  // The check is fraction.js: numerator and denominator as it keeps them, rounded half up by its own arithmetic.
  it('are read exactly, whatever number is written', () => {
    const anyNumber = fc.oneof(
      fc.tuple(fc.nat(900), fc.nat(99_999), fc.constantFrom('.', ',')).map(([whole, decimals, mark]) => {
        const text = `${whole}${mark}${String(decimals).padStart(5, '0')}`;
        return { text, value: new Fraction(text.replace(',', '.')) };
      }),
      fc.tuple(fc.nat(5000), fc.integer({ min: 1, max: 999 })).map(([over, under]) => {
        return { text: `${over}/${under}`, value: new Fraction(over, under) };
      }),
      fc
        .tuple(fc.nat(900), fc.nat(998), fc.integer({ min: 1, max: 999 }), fc.constantFrom(' ', '-'))
        .map(([whole, over, under, joint]) => ({
          text: `${whole}${joint}${over % under}/${under}`,
          value: new Fraction(over % under, under).add(whole),
        })),
    );
    fc.assert(
      fc.property(anyNumber, anyLengthUnit, ({ text, value }, unit) => {
        const units = value.mul(UNITS_PER[unit]);
        const nearest = units.add(1, 2).floor().valueOf();
        fc.pre(nearest <= 1000 * UNITS_PER_METER && (nearest > 0 || value.valueOf() === 0));
        expect(read(`${text} ${unit}`)).toBe(nearest);
        expect(read(text, unit)).toBe(nearest);
      }),
      { numRuns: 1000 },
    );
  });

  it('are one length in whichever unit they are written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900_000 }), (tenths) => {
        const millimeters = read(`${tenths / 10} mm`);
        expect(millimeters).toBe(tenths * 32);
        expect(read(`${(tenths / 100).toFixed(2)} cm`)).toBe(millimeters);
        expect(read(`${(tenths / 10_000).toFixed(4)} m`)).toBe(millimeters);
      }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400 }),
        fc.integer({ min: 0, max: 63 }),
        (inches, sixtyFourths) => {
          const length = read(`${inches} ${sixtyFourths}/64 in`);
          expect(read(`${inches * 64 + sixtyFourths}/64 in`)).toBe(length);
          expect(read(`${inches * 64 + sixtyFourths}/768 ft`)).toBe(length);
          expect(read(`${inches * 64 + sixtyFourths}/2304 yd`)).toBe(length);
          expect(read(`${(inches - (inches % 36)) / 36} yd ${inches % 36} ${sixtyFourths}/64 in`)).toBe(
            length,
          );
        },
      ),
    );
  });

  it('with a sign are read where a sign is asked for', () => {
    expect(parseSignedLength('-1/4', 'in')).toEqual({ ok: true, value: -2032 });
    expect(parseSignedLength('− ¼ in', 'cm')).toEqual({ ok: true, value: -2032 });
    expect(parseSignedLength('-¼', 'in')).toEqual({ ok: true, value: -2032 });
    expect(parseSignedLength('+3 mm', 'in')).toEqual({ ok: true, value: 960 });
    expect(parseSignedLength('-0', 'in')).toEqual({ ok: true, value: 0 });
    expect(parseSignedLength('--3', 'in')).toMatchObject({ ok: false, error: { code: 'not-a-length' } });
    expect(parseSignedLength('-', 'in')).toMatchObject({ ok: false, error: { code: 'not-a-length' } });
  });
});

describe('text that is no length', () => {
  it.each(MALFORMED_LENGTHS)('%j is answered with %s', (typed, code) => {
    const length = parseLength(typed, 'in');
    expect(length.ok ? length.value : length.error.code).toBe(code);
  });

  it.each(MALFORMED_LENGTHS)('%j comes back clipped, with texts that would have been read', (typed) => {
    for (const unit of ['in', 'ft', 'yd', 'mm', 'cm', 'm'] as const) {
      const length = parseLength(typed, unit);
      if (length.ok) continue;
      expect(Array.from(length.error.read).length).toBeLessThanOrEqual(40);
      expect(length.error.expected.length).toBeGreaterThan(0);
      for (const text of length.error.expected) expect(parseLength(text, unit)).toMatchObject({ ok: true });
    }
  });

  it('with an ambiguous comma is answered with both readings', () => {
    expect(parseLength('1,250 mm', 'in')).toEqual({
      ok: false,
      error: { code: 'ambiguous', read: '1,250 mm', expected: ['1250 mm', '1.250 mm'] },
    });
  });

  it.each([
    ['digits', '9'],
    ['slashes', '1/'],
    ['spaces', ' '],
    ['fractions', '½'],
    ['combining marks', '\u0301'],
    ['a character that normalises to many', '\ufdfa'],
    ['halves of surrogate pairs', '\ud83d'],
  ])(
    'and is ten million characters of %s is refused, long before the test runs out of time',
    (_name, piece) => {
      const text = piece.repeat(10_000_000 / piece.length);
      expect(parseLength(text, 'in')).toMatchObject({ ok: false, error: { code: 'too-long' } });
    },
  );

  it('is never an exception, and what is read is a length', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 90 }),
      fc.string({ unit: 'binary', maxLength: 90 }),
      fc
        .array(fc.constantFrom(...Array.from('0123456789 ./,-+½¾\'"″xinydftmcqFQ⁄¹₂')), { maxLength: 20 })
        .map((some) => some.join('')),
    );
    fc.assert(
      fc.property(anyText, anyLengthUnit, (text, unit) => {
        const length = parseSignedLength(text, unit);
        if (length.ok) expect(Number.isInteger(length.value)).toBe(true);
        else expect(Array.from(length.error.read).length).toBeLessThanOrEqual(40);
        const unsigned = parseLength(text, unit);
        if (unsigned.ok) expect(unsigned.value).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 3000 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LENGTH_ZERO,
  lengthAdd,
  lengthFromExact,
  lengthFromInches,
  lengthFromMeters,
  lengthFromMillimeters,
  lengthFromUnits,
  lengthInInches,
  lengthInMillimeters,
  lengthMaximum,
  lengthMinimum,
  lengthSubtract,
  lengthTimes,
  MAX_LENGTH_UNITS,
  UNITS_PER_INCH,
  UNITS_PER_METER,
  UNITS_PER_MILLIMETER,
  UNITS_PER_YARD,
} from '#core/units/length';
import { benchLength } from '#test/helpers/arbitraries';

describe('the base unit', () => {
  // NIST Handbook 44, Appendix C, and NIST SP 811: 1 in = 25.4 mm and 1 yd = 0.9144 m, exactly (agreement of 1959).
  it('has 25.4 mm in an inch and 0.9144 m in a yard, exactly', () => {
    expect(UNITS_PER_INCH * 10).toBe(UNITS_PER_MILLIMETER * 254);
    expect(UNITS_PER_YARD * 10_000).toBe(UNITS_PER_METER * 9_144);
    expect(lengthInMillimeters(lengthFromInches(1))).toBe(25.4);
    expect(lengthFromMillimeters(914.4)).toBe(lengthFromInches(36));
    expect(lengthFromMeters(0.9144)).toBe(lengthFromInches(36));
  });

  it('is the largest unit in which 1/64 in and 0.1 mm are both whole', () => {
    const [sixtyFourth, tenth] = [UNITS_PER_INCH / 64, UNITS_PER_MILLIMETER / 10];
    expect([sixtyFourth, tenth]).toEqual([127, 32]);
    const greatestCommonDivisor = (a: number, b: number): number =>
      b === 0 ? a : greatestCommonDivisor(b, a % b);
    expect(greatestCommonDivisor(sixtyFourth, tenth)).toBe(1);
  });
});

describe('making a length', () => {
  it.each([0.5, NaN, Infinity, MAX_LENGTH_UNITS + 1, -MAX_LENGTH_UNITS - 1])('refuses %d units', (units) => {
    expect(() => lengthFromUnits(units)).toThrow(RangeError);
  });

  it('has no negative zero', () => {
    expect(lengthFromUnits(-0)).toBe(LENGTH_ZERO);
    expect(lengthSubtract(lengthFromUnits(5), lengthFromUnits(5))).toBe(0);
  });

  it('is exact for every sixty-fourth of an inch and every tenth of a millimeter', () => {
    for (let steps = 0; steps <= 64 * 120; steps += 1) expect(lengthFromInches(steps / 64)).toBe(steps * 127);
    for (let steps = 0; steps <= 30_000; steps += 1)
      expect(lengthFromMillimeters(steps / 10)).toBe(steps * 32);
  });

  it('rounds a computed length once, in the given direction', () => {
    const diagonal = Math.SQRT2 * lengthFromInches(12);
    const eighth = UNITS_PER_INCH / 8;
    expect(lengthInInches(lengthFromExact(diagonal, 'up', eighth))).toBe(17);
    expect(lengthInInches(lengthFromExact(diagonal, 'down', eighth))).toBe(16.875);
    expect(lengthInInches(lengthFromExact(diagonal, 'nearest', eighth))).toBe(17);
    expect(lengthFromExact(diagonal, 'up')).toBe(Math.ceil(diagonal));
  });
});

describe('arithmetic of lengths', () => {
  it('subtracting what was added gives the first length again, to the last unit', () => {
    fc.assert(
      fc.property(benchLength(), benchLength(), (first, second) => {
        expect(lengthSubtract(lengthAdd(first, second), second)).toBe(first);
      }),
    );
  });

  it('multiplying is the same as adding the length that many times', () => {
    fc.assert(
      fc.property(benchLength(), fc.integer({ min: 1, max: 20 }), (length, times) => {
        const copies = Array.from({ length: times - 1 }, () => length);
        expect(lengthTimes(length, times)).toBe(lengthAdd(length, ...copies));
      }),
    );
  });

  it('refuses multiples that are not whole and sums beyond ten kilometers', () => {
    expect(() => lengthTimes(lengthFromUnits(3), 1.5)).toThrow(RangeError);
    expect(() => lengthAdd(lengthFromUnits(MAX_LENGTH_UNITS), lengthFromUnits(1))).toThrow(RangeError);
  });

  it('picks the shortest and the longest of several', () => {
    const [short, middle, long] = [lengthFromUnits(-1), lengthFromUnits(2), lengthFromUnits(9)];
    expect(lengthMinimum(middle, long, short)).toBe(short);
    expect(lengthMaximum(middle, long, short)).toBe(long);
  });
});

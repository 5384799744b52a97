import { describe, expect, it } from 'vitest';
import { formatArea } from '#core/units/format-area';
import { lengthFromInches, lengthFromMillimeters, UNITS_PER_INCH } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';

const INCH: LengthDisplay = { system: 'inch', inchStep: 8 };
const METRIC: LengthDisplay = { system: 'metric', inchStep: 8 };

describe('an area', () => {
  it.each<[number, number, string]>([
    [8.5, 25, '212.5 sq in'],
    [35.9, 36, '1292.4 sq in'],
    [36, 36, '1 sq yd'],
    [54, 42, '1.75 sq yd'],
    [0, 9, '0 sq in'],
  ])('of %d by %d inches is %s', (width, length, text) => {
    expect(formatArea(lengthFromInches(width) * lengthFromInches(length), INCH)).toBe(text);
  });

  it.each<[number, number, string]>([
    [150, 100.2, '150.3 cm²'],
    [999, 1000, '9990 cm²'],
    [1000, 1000, '1 m²'],
    [1250, 1500, '1.88 m²'],
  ])('of %d by %d mm is %s', (width, length, text) => {
    expect(formatArea(lengthFromMillimeters(width) * lengthFromMillimeters(length), METRIC)).toBe(text);
  });

  it('may be any finite number of square units, negative too', () => {
    expect(formatArea(Math.PI * 25 * UNITS_PER_INCH ** 2, INCH)).toBe('78.5 sq in');
    expect(formatArea(-2 * UNITS_PER_INCH ** 2, INCH)).toBe('−2 sq in');
    expect(() => formatArea(Infinity, INCH)).toThrow(RangeError);
  });
});

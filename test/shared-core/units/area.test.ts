import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaAdd,
  areaFromUnits,
  areaInSquareInches,
  areaInSquareMeters,
  areaOfRectangle,
  areaSubtract,
} from '#core/units/area';
import { lengthAdd, lengthFromInches, lengthFromMillimeters, lengthFromUnits } from '#core/units/length';
import { benchLength } from '#test/helpers/arbitraries';

describe('areas', () => {
  it('are the same in inches and millimeters', () => {
    const yard = areaOfRectangle(lengthFromInches(36), lengthFromInches(36));
    expect(areaInSquareInches(yard)).toBe(1296);
    expect(areaInSquareMeters(yard)).toBeCloseTo(0.83612736, 15);
    expect(areaOfRectangle(lengthFromMillimeters(914.4), lengthFromMillimeters(914.4))).toBe(yard);
  });

  it('of a piece cut across are the sum of both parts, to the last unit', () => {
    fc.assert(
      fc.property(benchLength(), benchLength(), benchLength(), (width, first, second) => {
        const whole = areaOfRectangle(width, lengthAdd(first, second));
        const cut = areaOfRectangle(width, first);
        expect(areaAdd(cut, areaOfRectangle(width, second))).toBe(whole);
        expect(areaSubtract(whole, cut)).toBe(areaOfRectangle(width, second));
      }),
    );
  });

  it('beyond what is exact are refused, not rounded', () => {
    const kilometer = lengthFromUnits(320_000_000);
    expect(areaOfRectangle(kilometer, lengthFromMillimeters(87_000))).toBe(320_000_000 * 87_000 * 320);
    expect(() => areaOfRectangle(kilometer, kilometer)).toThrow(RangeError);
    expect(() => areaFromUnits(1.5)).toThrow(RangeError);
    expect(areaFromUnits(-0)).toBe(0);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import type { LengthProblemCode } from '#core/units/length-problem';
import { formatLengthForEditing } from '#core/units/format-length';
import { parseFabricSize } from '#core/units/parse-fabric-size';
import { MAX_TYPED_CHARACTERS } from '#core/units/typed-text';
import { anyDisplay, anyLength } from '#test/helpers/arbitraries';

const inches = (width: number, length: number) => ({
  ok: true,
  value: { width: lengthFromInches(width), length: lengthFromInches(length) },
});

describe('a size of fabric', () => {
  it.each(['18 x 22', '18x22', '18×22 in', '18 in x 22 in', '18"×22"', '18 X 22"', "18 x 22''", '18. x 22.'])(
    '%s is width by length as written',
    (text) => {
      expect(parseFabricSize(text, 'in')).toEqual(inches(18, 22));
    },
  );

  it('takes the unit at the end for both sides, and units of its own for each', () => {
    expect(parseFabricSize('45 x 55 cm', 'in')).toEqual({
      ok: true,
      value: { width: lengthFromMillimeters(450), length: lengthFromMillimeters(550) },
    });
    expect(parseFabricSize('42 in x 1½ yd', 'cm')).toEqual(inches(42, 54));
    expect(parseFabricSize('42 in x 54', 'in')).toEqual(inches(42, 54));
  });

  // Common practice: a fat quarter is 18 by 22 in (half of 44 in fabric), a fat eighth 9 by 22 in.
  it.each([
    ['FQ', 22, 18],
    ['fq', 22, 18],
    [' Fat  Quarter ', 22, 18],
    ['F8', 22, 9],
    ['FE', 22, 9],
    ['fat eighth', 22, 9],
  ])('%s is %d in across and %d in along the selvage', (text, width, length) => {
    expect(parseFabricSize(text, 'cm')).toEqual(inches(width, length));
  });

  it('is as wide as the fabric where only its length is written', () => {
    expect(parseFabricSize('1 1/4 yd', 'in', lengthFromInches(42))).toEqual(inches(42, 45));
    expect(parseFabricSize('9', 'in', lengthFromInches(42))).toEqual(inches(42, 9));
  });

  it.each<[string, LengthProblemCode]>([
    ['', 'empty'],
    ['1 1/4 yd', 'width-missing'],
    ['18 x', 'not-a-length'],
    ['x 22', 'not-a-length'],
    ['x', 'not-a-length'],
    ['18 x 22 x 3', 'not-a-length'],
    ['18 x abc', 'not-a-length'],
    ['quarter', 'not-a-length'],
    ['F9', 'not-a-length'],
    ['toString', 'not-a-length'],
    ['18 x 1/0', 'zero-denominator'],
    ['18 x -22', 'negative'],
    ['1,250', 'ambiguous'],
    ['1,250 x 3 mm', 'ambiguous'],
    ['18 x 20000 m', 'out-of-range'],
    ['18 x 0.00001', 'too-fine'],
    ['18 x 9 furlongs', 'unknown-unit'],
    ['9 x'.repeat(40), 'too-long'],
  ])('%j is answered with %s', (text, code) => {
    const size = parseFabricSize(text, 'in');
    expect(size.ok ? size.value : size.error.code).toBe(code);
    if (size.ok) return;
    expect(size.error.expected.length).toBeGreaterThan(0);
    for (const example of size.error.expected) {
      expect(parseFabricSize(example, 'in', lengthFromInches(42))).toMatchObject({ ok: true });
    }
  });

  it('asks back in the readings a length alone may have, and else in whole sizes', () => {
    const expected = (text: string) => {
      const size = parseFabricSize(text, 'in', lengthFromInches(42));
      return size.ok ? [] : size.error.expected;
    };
    const [readings, sizes] = [expected('1,250'), expected('quarter')];
    expect(sizes).toContain('FQ');
    expect(readings.join()).toMatch(/1250.*1\.25|1\.25.*1250/);
  });

  it('reads a text of just the longest length there may be', () => {
    expect(parseFabricSize('1 x 2'.padEnd(MAX_TYPED_CHARACTERS), 'in')).toMatchObject({ ok: true });
    expect(parseFabricSize('1 x 2'.padEnd(MAX_TYPED_CHARACTERS + 1), 'in')).toMatchObject({
      error: { code: 'too-long' },
    });
  });

  it('reads back any two lengths written with their units', () => {
    fc.assert(
      fc.property(anyLength, anyLength, anyDisplay, (width, length, display) => {
        const text = `${formatLengthForEditing(width, display)} x ${formatLengthForEditing(length, display)}`;
        expect(parseFabricSize(text, 'm')).toEqual({ ok: true, value: { width, length } });
      }),
    );
  });
});

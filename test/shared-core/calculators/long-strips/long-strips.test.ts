import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LongStripsInput } from '#core/calculators/long-strips/input';
import { longStrips } from '#core/calculators/long-strips/long-strips';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyMeasurements } from '#test/helpers/measurements';

const YARD = 36;
const none = lengthFromUnits(0);
const starting: LongStripsInput = {
  ...longStrips.fromProject({
    outline: { shape: 'rectangle', width: inches(50), length: inches(60) },
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  }),
  safetyExtra: 0,
};
const border = (
  topWidth: number,
  topLength: number,
  width: number,
  change: Partial<LongStripsInput> = {},
): LongStripsInput => ({
  ...starting,
  strips: { of: 'border', topWidth: inches(topWidth), topLength: inches(topLength), corners: 'butted' },
  stripWidth: inches(width),
  extraLength: none,
  ...change,
});
const listed = (lengths: readonly number[], width: number, change: Partial<LongStripsInput> = {}) => ({
  ...border(1, 1, width, change),
  strips: { of: 'strips' as const, list: lengths.map((length) => ({ length: inches(length), count: 1 })) },
});
const detailsOf = (input: LongStripsInput) => answerOf(longStrips, input).details;
const alongOf = (input: LongStripsInput) => detailsOf(input).along.fabric / UNITS_PER_INCH;
const inYards = (units: number) => units / UNITS_PER_INCH / YARD;

describe('borders along the fabric', () => {
  // Common practice: 80 in long and 10 in over come to 90 in, 2 1/2 yd; up to 10 in wide, four fit side by side. 12 in wide: 5 yd.
  it.each([
    [9.5, 2.5],
    [12, 5],
  ])('80 in long and %d in wide take %d yd', (width, yards) => {
    const input = listed([80, 80, 80, 80], width, { extraLength: inches(9.5) });
    expect(inYards(detailsOf(input).along.toBuy)).toBe(yards);
  });

  // Known slip: a page adds 51 and 61 in for a border of 5 in around 40 by 50 in and buys 3 1/4 yd. Derived: the four lie side by
  // side, so 61 in are enough, 1 3/4 yd; across the fabric it is six strips, 33 in, 1 yd.
  it('5 in wide around 40 by 50 in take 61 in, and not the sum of two lengths', () => {
    const input: LongStripsInput = {
      ...border(40, 50, 5, { extraLength: inches(1 / 2), join: 'straight' }),
      strips: { of: 'border', topWidth: inches(40), topLength: inches(50), corners: 'mitered' },
    };
    const { along, across } = detailsOf(input);
    expect([along.fabric, inYards(along.toBuy)]).toEqual([inches(61), 1.75]);
    expect(across).toMatchObject({ strips: 6, fabric: inches(33) });
    expect(inYards(across!.toBuy)).toBe(1);
  });

  // Published: APQ-M, a mitered strip is side + 2 x width + 6: 40 in with a border of 5 in takes 56 in.
  it('with mitered corners are a side, two widths and what is over', () => {
    const input: LongStripsInput = {
      ...border(40, 40, 5, { extraLength: inches(5.5) }),
      strips: { of: 'border', topWidth: inches(40), topLength: inches(40), corners: 'mitered' },
    };
    expect(detailsOf(input).strips.map(({ cut }) => cut)).toEqual([inches(56), inches(56)]);
  });

  // Published: ANN, top and bottom are the top, both side borders and 1/2 in; the sides are the length and 1/2 in.
  it('with butted corners run across the ends of the sides, with cornerstones between them', () => {
    const cut = (input: LongStripsInput) => detailsOf(input).strips.map((one) => one.cut / UNITS_PER_INCH);
    expect(cut(border(36, 45, 4))).toEqual([45.5, 44.5]);
    const stones = {
      of: 'border',
      topWidth: inches(36),
      topLength: inches(45),
      corners: 'cornerstones',
    } as const;
    expect(cut({ ...border(36, 45, 4), strips: stones })).toEqual([45.5, 36.5]);
  });

  // Common practice: 2 in over, trimmed off once the top is measured.
  it('start with 2 in over', () => {
    expect(starting.extraLength).toBe(inches(2));
    expect(detailsOf({ ...border(36, 45, 4), extraLength: inches(2) }).strips[0]?.cut).toBe(inches(47.5));
  });

  it('start so that top and border come to the size of the project', () => {
    fc.assert(
      fc.property(anyMeasurements, (measurements) => {
        const { strips, stripWidth } = longStrips.fromProject(measurements);
        const { outline } = measurements;
        if (strips.of !== 'border' || outline.shape !== 'rectangle') return;
        expect(strips.topWidth + 2 * stripWidth).toBe(outline.width);
        expect(strips.topLength + 2 * stripWidth).toBe(outline.length);
      }),
    );
  });
});

describe('strips across the fabric, joined', () => {
  // Published: PAP, a border of 4 in around 70 by 80 in: 300 in of strip, 40 in from each, 7.5: eight strips, 36 in, 1 yd.
  it('are eight around 70 by 80 in', () => {
    const sides = listed([70, 70, 80, 80], 4, { fabricWidth: inches(40.5), join: 'straight' });
    expect(detailsOf(sides).across).toMatchObject({ strips: 8, fabric: inches(36) });
    expect(inYards(detailsOf(sides).across!.toBuy)).toBe(1);
  });

  // Common practice: a border of 5 in around 56 by 61 in takes seven strips of 42 in.
  it('are seven around 56 by 61 in', () => {
    expect(detailsOf(border(56, 61, 5, { join: 'straight' })).across?.strips).toBe(7);
  });

  it('are the fewest that reach, laid one after the other', () => {
    const lengths = fc.array(fc.integer({ min: 5, max: 120 }), { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 12 }), (list, width) => {
        const input = listed(list, width);
        const { across, strips } = detailsOf(input);
        const needed = strips.reduce((sum, { cut }) => sum + cut, 0);
        const laid = (count: number) => count * inches(42) - (count - 1) * inches(width + 1 / 2);
        expect(laid(across!.strips)).toBeGreaterThanOrEqual(needed);
        if (across!.strips > 1) expect(laid(across!.strips - 1)).toBeLessThan(needed);
      }),
    );
  });
});

/** The least fabric of every way to put strips into rows of at most `perRow`. */
function leastOfAll(lengths: readonly number[], perRow: number): number {
  const [longest, ...rest] = lengths;
  if (longest === undefined) return 0;
  let least = Infinity;
  for (let chosen = 0; chosen < 2 ** rest.length; chosen += 1) {
    const inRow = rest.filter((_, index) => (chosen >> index) % 2 === 1);
    if (inRow.length >= perRow) continue;
    const others = rest.filter((_, index) => (chosen >> index) % 2 === 0);
    least = Math.min(least, Math.max(longest, ...inRow) + leastOfAll(others, perRow));
  }
  return least;
}

describe('rows along the fabric', () => {
  it('take no more than the best of all ways to fill them', () => {
    const lengths = fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(lengths, fc.constantFrom(8, 12, 16, 30), (list, width) => {
        const { along, strips } = detailsOf(listed(list, width));
        const cut = strips.map((one) => one.cut);
        expect(along.fabric).toBe(leastOfAll(cut, Math.floor(42 / (width + 0.5))));
        expect(along.rows.reduce((sum, row) => sum + row.rows * row.strips, 0)).toBe(list.length);
      }),
      { numRuns: 60 },
    );
  });

  it('never take less for longer, wider or more strips, and hold the area that is cut', () => {
    const lengths = fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 19 }), fc.nat({ max: 20 }), (list, width, more) => {
        const fabric = alongOf(listed(list, width));
        expect(alongOf(listed([...list.slice(1), list[0]! + more], width))).toBeGreaterThanOrEqual(fabric);
        expect(alongOf(listed(list, width + more))).toBeGreaterThanOrEqual(fabric);
        expect(alongOf(listed([...list, 5 + more], width))).toBeGreaterThanOrEqual(fabric);
        const area = list.reduce((sum, length) => sum + (length + 0.5) * (width + 0.5), 0);
        expect(fabric * 42).toBeGreaterThanOrEqual(area);
      }),
    );
  });

  it('round cut sizes up, strips side by side down, and fabric up', () => {
    const metric = lengthFromUnits(320);
    fc.assert(
      fc.property(fc.integer({ min: 5_000, max: 80_000 }).map(lengthFromUnits), (width) => {
        const input = { ...border(30, 40, 1), stripWidth: width, cutStep: metric, safetyExtra: 5 };
        const details = detailsOf(input);
        const exact = width + 2 * input.seamAllowance;
        expect(details.width % metric).toBe(0);
        expect(details.width - exact).toBeGreaterThanOrEqual(0);
        expect(details.width - exact).toBeLessThan(metric);
        expect(details.along.perRow * details.width).toBeLessThanOrEqual(input.fabricWidth);
        expect((details.along.perRow + 1) * details.width).toBeGreaterThan(input.fabricWidth);
        expect(details.along.toBuy).toBeGreaterThanOrEqual(details.along.fabric * 1.05 - 1e-6);
      }),
    );
  });
});

describe('what is bought and cut', () => {
  it('is the way that was chosen, on the shopping list, in the cutting plan and in the figures', () => {
    const lengths = fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(
        lengths,
        fc.integer({ min: 1, max: 19 }),
        fc.constantFrom('along', 'across'),
        (list, width, way) => {
          const input = listed(list, width, { way });
          const { details, figures } = answerOf(longStrips, input);
          const fabric = way === 'along' ? details.along.fabric : details.across!.fabric;
          const [need] = longStrips.needs!(input, details, inches(42));
          expect(lengthFor(need!.amount, { width: inches(42), turning: 'any' })).toBe(fabric);
          expect(figures[0]?.quantity).toMatchObject({ exact: fabric, use: 'yardage' });
          const cuts = longStrips.cuts!(input, details);
          const cutLengths = cuts.reduce((sum, { length, count }) => sum + length * count, 0);
          if (way === 'across') expect(cutLengths).toBe(fabric);
          else expect(cutLengths).toBe(details.across!.needed);
        },
      ),
    );
  });

  it('is refused for a strip wider than the fabric, joins that take all, and far too much', () => {
    expect(refusalOf(longStrips, border(40, 50, 40, { fabricWidth: inches(40) }))).toMatchObject({
      code: 'strip-too-wide',
      field: ['stripWidth'],
    });
    const square = border(40, 50, 39.5, { fabricWidth: inches(40), way: 'across' });
    expect(refusalOf(longStrips, square)).toMatchObject({ code: 'strips-too-short', field: ['way'] });
    expect(detailsOf({ ...square, way: 'along' }).across).toBeNull();
    const list = [{ length: inches(300), count: 60 }];
    const endless = { ...border(1, 1, 30), strips: { of: 'strips' as const, list } };
    expect(refusalOf(longStrips, endless)).toMatchObject({ code: 'too-much-fabric', field: ['strips'] });
  });

  it('compares no way across the fabric where its joins leave next to nothing of each strip, and lays them along it', () => {
    // By hand: strips cut 20 in wide from fabric of 20 1/8 in: each one after the first adds 1/8 in, so 191 in take 1,369 of them.
    const tight = border(20, 30, 19.5, { fabricWidth: inches(20.125), join: 'diagonal' });
    expect(detailsOf(tight)).toMatchObject({ across: null, along: { perRow: 1 } });
    expect(refusalOf(longStrips, { ...tight, way: 'across' })).toMatchObject({ code: 'too-much-fabric' });
    // Of 100 in strips and fabric of 101 in, each adds 1 in: 3 · 160 in need 381 strips, 38,100 in, more than 200 m (7,874 in).
    const wide = listed([159.5, 159.5, 159.5], 99.5, { fabricWidth: inches(101), join: 'diagonal' });
    expect(detailsOf(wide).across).toBeNull();
    expect(alongOf(wide)).toBe(3 * 160);
    expect(refusalOf(longStrips, { ...wide, way: 'across' })).toMatchObject({ code: 'too-much-fabric' });
  });

  it('says how a border and how sashing is cut to length', () => {
    const says = (input: LongStripsInput) => answerOf(longStrips, input).notes[0];
    expect(says(starting)).toMatchObject({ kind: 'tip', values: { extra: { rounded: inches(2) } } });
    expect(says(starting)?.says).toMatch(/through its middle/);
    expect(says(listed([45], 2))?.says).toMatch(/rows are sewn/);
  });
});

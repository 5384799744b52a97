import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HoleSizeInput } from '#core/calculators/center/hole-size/input';
import type { LengthQuantity } from '#core/calculators/explanation';
import { formatQuantity } from '#core/calculators/format-quantity';
import { CAUTIONS } from '#core/domain/cautions';
import { lengthFromInches as inches, lengthFromMillimeters, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { answer, around, starting } from './hole';

describe('the hole for a trunk, stand or pole', () => {
  it('for 20 in around is 20/π plus the ease, rounded up to the next ruler size (derived)', () => {
    const { details } = answer(around(20));
    expect(details.exactDiameter / UNITS_PER_INCH).toBeCloseTo(6.3662 + 0.5, 4);
    expect(details.diameter).toBe(inches(7));
  });

  it('can also be measured across', () => {
    expect(answer({ from: 'across', measure: inches(6), ease: inches(1 / 2) }).details.diameter).toBe(
      inches(6.5),
    );
  });

  it('uses π and not 3.14, which would be 0.05% off (derived)', () => {
    const exact = answer(around(157.0796, 0)).details.exactDiameter / UNITS_PER_INCH;
    expect(exact).toBeCloseTo(50, 3);
    expect(157.0796 / 3.14 - exact).toBeGreaterThan(0.02);
  });

  it('is never smaller than the thing that goes through plus its ease, and less than a ruler step larger', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 800 }),
        fc.integer({ min: 0, max: 16 }),
        fc.constantFrom(inches(1 / 8), inches(1 / 4), inches(1 / 2), inches(1), lengthFromMillimeters(10)),
        (eighths, ease, rulerStep) => {
          const { exactDiameter, diameter } = answer({ ...around(eighths / 8, ease / 8), rulerStep }).details;
          expect(diameter).toBeGreaterThanOrEqual(exactDiameter - 1e-6);
          expect(diameter - exactDiameter).toBeLessThan(rulerStep);
          expect(diameter % rulerStep).toBe(0);
        },
      ),
    );
  });
});

describe('measured around or across', () => {
  const anyMeasure = fc.integer({ min: 8, max: 800 });
  const exactOf = (change: Partial<HoleSizeInput>) => answer(change).details.exactDiameter;

  it('is the same hole: the distance around is π times the diameter', () => {
    fc.assert(
      fc.property(anyMeasure, (eighths) => {
        const across = exactOf({ from: 'across', measure: inches(eighths / 8), ease: inches(1 / 2) });
        const round = exactOf(around((Math.PI * eighths) / 8));
        // The tape is read to 1/320 mm.
        expect(Math.abs(round - across)).toBeLessThan(1);
      }),
    );
  });

  it('grows with the measurement and with the ease, and so does its seam line', () => {
    fc.assert(
      fc.property(anyMeasure, (eighths) => {
        const one = answer(around(eighths / 8)).details;
        for (const more of [around((eighths + 1) / 8), around(eighths / 8, 0.625)])
          expect(exactOf(more)).toBeGreaterThan(one.exactDiameter);
        const { diameter, seamLine } = answer(around(eighths / 8 + 8)).details;
        expect(diameter).toBeGreaterThan(one.diameter);
        expect(seamLine).toBeGreaterThan(one.seamLine);
      }),
    );
  });

  // Common practice: a 36 in tree skirt is drawn with an 18 in string; a turning ruler is set to half the diameter.
  it('is drawn with half its diameter', () => {
    const { figures } = answer({ from: 'wish', measure: inches(36) });
    expect(figures[1]).toMatchObject({
      label: 'Radius, for a turning ruler',
      quantity: { rounded: inches(18) },
    });
  });
});

// A radius rounded up to the next eighth would make the hole an eighth too wide.
it('of 6 3/8 in is drawn with a ruler set to 3 3/16 in, and never to more than half the hole', () => {
  const style = {
    display: { system: 'inch', inchStep: 8 },
    currency: currencyFromCode('USD'),
    locale: 'en-US',
  } as const;
  const radius = (measure: number) =>
    answer({ from: 'wish', measure: inches(measure) }).figures[1]!.quantity as LengthQuantity;
  expect(formatQuantity(radius(6.375), style)).toBe('3 3/16 in');
  fc.assert(
    fc.property(fc.integer({ min: 16, max: 800 }), (sixteenths) => {
      const { rounded, exact } = radius(sixteenths / 16);
      expect(rounded).toBeLessThanOrEqual(exact);
      expect(exact).toBeCloseTo(inches(sixteenths / 16) / 2, 9);
    }),
  );
});

describe('the next ruler size', () => {
  const more = (change: Partial<HoleSizeInput>) =>
    answer(change).notes.find(({ says }) => says.includes('next ruler size'));

  it('has a tip that names by how much it is larger than needed', () => {
    const across = (measure: number) =>
      ({ from: 'across', measure: inches(measure), ease: inches(1 / 2) }) as const;
    expect(more(across(5.75))?.values).toMatchObject({ more: { rounded: inches(1 / 4) } });
    expect(more(across(6))).toBeUndefined();
    expect(more({ from: 'wish', measure: inches(6.3125) })).toBeUndefined();
  });
});

describe('a given size', () => {
  it('is taken as it is, without ease', () => {
    for (const from of ['ruler', 'wish'] as const) {
      expect(answer({ from, measure: inches(6.3125) }).details.diameter).toBe(inches(6.3125));
    }
  });

  it('starts as the hole of the project', () => {
    expect(starting()).toMatchObject({ from: 'wish', measure: inches(6.5) });
  });
});

it('has a seam line of 21.99 in for 6 1/2 in and a quarter-inch seam (derived)', () => {
  expect(answer().details.seamLine / UNITS_PER_INCH).toBeCloseTo(2 * Math.PI * 3.5, 9);
});

it('lists the nearest ruler sizes with the room each leaves', () => {
  const [, table] = answer(around(20)).tables;
  expect(table?.columns[2]).toBe('Room on each side, washed');
  expect(table?.rows.map(([across]) => (across?.kind === 'length' ? across.rounded : 0))).toEqual(
    [6, 6.5, 7, 7.5].map(inches),
  );
  const [tooSmall, , fits] = table!.rows.map(([, , room]) => (room?.kind === 'length' ? room.exact : 0));
  expect(tooSmall).toBeLessThan(0);
  expect(fits! / UNITS_PER_INCH).toBeCloseTo((7 - 20 / Math.PI) / 2, 4);
});

it('lists no ruler size of 0', () => {
  const [, table] = answer({ from: 'wish', measure: inches(1 / 4) }).tables;
  expect(table?.rows).toHaveLength(2);
});

it('draws the thing that goes through only if it was measured', () => {
  const plans = (change: Partial<HoleSizeInput>) =>
    answer(change).diagram!.parts.filter((part) => part.part === 'circle' && part.tone === 'plan');
  expect(plans(around(20))).toMatchObject([{ radius: inches(20) / Math.PI / 2 }]);
  expect(plans({})).toEqual([]);
});

it('has the cautions for a tree, a flame, blades and pins', () => {
  const cautions = answer().notes.filter(({ kind }) => kind === 'caution');
  const expected = [
    CAUTIONS.rotaryBlade,
    CAUTIONS.scissors,
    CAUTIONS.pins,
    CAUTIONS.usedBlades,
    CAUTIONS.tree,
    CAUTIONS.flame,
  ];
  expect(cautions.map(({ says }) => says)).toEqual(expected);
});

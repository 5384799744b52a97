import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backing } from '#core/calculators/backing/backing';
import type { BackingInput } from '#core/calculators/backing/input';
import { coverSize } from '#core/calculators/cover-size/cover-size';
import { MATTRESSES } from '#core/calculators/cover-size/mattresses';
import { type CoveredThing, workOutCoverSize } from '#core/calculators/cover-size/work';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH, UNITS_PER_YARD } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';

const measurements = {
  outline: { shape: 'square', side: inches(40) },
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
} as const;
const unwashed = { ...coverSize.fromProject(measurements), acrossPercent: 0, alongPercent: 0 };
const inPlace = (over: CoveredThing, drop: number) => {
  const { width, length } = workOutCoverSize({ ...unwashed, drop: inches(drop) }, over);
  return [width / UNITS_PER_INCH, length / UNITS_PER_INCH];
};
const bed = (width: number, length: number, footDrop: number, pillowFold = 0) =>
  ({
    over: 'bed',
    width: inches(width),
    length: inches(length),
    footDrop: inches(footDrop),
    pillowFold: inches(pillowFold),
  }) as const;
const table = (diameter: number) => ({ over: 'round', diameter: inches(diameter) }) as const;

/** Whole widths for a cloth of this size, sewn with 1/2 in seams. */
const widthsOf = (across: number, fabric: number) => {
  const input: BackingInput = {
    ...backing.fromProject(measurements),
    outline: { shape: 'square', side: inches(across) },
    overhang: inches(0),
    fabricWidth: inches(fabric),
    seam: inches(1 / 2),
    safetyExtraPercent: 0,
  };
  const { panels, fabricLength } = answerOf(backing, input).details.ways.find(
    ({ last }) => last === 'whole',
  )!;
  return { panels, inches: fabricLength / UNITS_PER_INCH, yards: fabricLength / UNITS_PER_YARD };
};
const toBuy = (yards: number) => Math.ceil(yards * 4 - 1e-9) / 4;

describe('bed sizes in print', () => {
  // Common practice: a quilter's list of mattresses and comforters. The drops at the sides and the foot follow from it.
  it.each([
    ['twin', 39, 74, 13.5, 12, 66, 86],
    ['full', 54, 74, 11, 12, 76, 86],
    ['queen', 60, 80, 13, 8, 86, 88],
    ['king', 78, 80, 12, 8, 102, 88],
  ])('a %s of %d by %d in with %d in at the sides and %d in at the foot', (_, ...sizes) => {
    const [width, length, drop, foot, across, along] = sizes;
    expect(inPlace(bed(width, length, foot), drop)).toEqual([across, along]);
  });

  // The same list, and others that have 75 in for 74, 76 for 78 and 28 for 27: no mattress differs by more than 2 in.
  it.each([
    ['Crib', 27, 52],
    ['Twin', 39, 74],
    ['Full', 54, 74],
    ['Queen', 60, 80],
    ['King', 78, 80],
  ])('the %s in the table is within 2 in of %d by %d', (name, width, length) => {
    const listed = MATTRESSES.inch.find((one) => one.name === name)!;
    expect(Math.abs(listed.width - inches(width))).toBeLessThanOrEqual(inches(2));
    expect(Math.abs(listed.length - inches(length))).toBeLessThanOrEqual(inches(2));
  });

  // Published: OUR-Q, a spread that reaches the floor 24 in below is 108 by 116 to 120 in: with 12 to 16 in for the pillows.
  it.each([
    [12, 116],
    [16, 120],
  ])('a queen spread to the floor with %d in for the pillows is 108 by %d in', (fold, along) => {
    expect(inPlace(bed(60, 80, 24, fold), 24)).toEqual([108, along]);
  });

  // Common practice: a drop of half to three quarters of the height of the bed, 12 to 18 in for 24 in.
  it('start with a drop in use for a bed 24 in high', () => {
    expect(unwashed.drop).toBeGreaterThanOrEqual(inches(12));
    expect(unwashed.drop).toBeLessThanOrEqual(inches(18));
  });

  // Known slips: a seller's guide gives drops at the foot of 7.5, 8 and 16 in for these. Nothing hangs down at the head, so they are 15,
  // 12 and 8 (or 7.5, 6 and 4 at each of two ends). Its drops at the sides are right.
  it.each([
    [39, 75, 15.5, 15, 70, 90],
    [39, 80, 15.5, 12, 70, 92],
    [72, 84, 15, 8, 102, 92],
  ])('a mattress of %d by %d in, %d in at the sides, %d in at the foot: %d by %d in', (...sizes) => {
    const [width, length, drop, foot, across, along] = sizes;
    expect(inPlace(bed(width, length, foot), drop)).toEqual([across, along]);
  });

  // Common practice: a blanket is as wide as the bed, twice its depth and about 10 in: 54 and 8 in make 80.
  it('a blanket for a bed 54 in wide and 8 in deep, 5 in lower on both sides, is 80 in wide', () => {
    expect(inPlace(bed(54, 75, 12), 8 + 5)[0]).toBe(80);
  });
});

describe('round cloths in print', () => {
  // Common practice: 1 in for the hem is 1/2 in of drop on both sides; another page takes 1 1/2 in on both.
  it.each([
    [24, 30, 1 / 2, 85],
    [24, 30, 1.5, 87],
  ])(
    'a table of %d in with a drop of %d in and a hem of %d in takes %d in',
    (diameter, drop, hem, across) => {
      expect(inPlace(table(diameter), drop + hem)[0]).toBe(across);
    },
  );

  // Published: SNW, a table of 19 3/4 in, 25 in to the floor and 1 in for the hem: 70 3/4 in, a radius of 35 3/8.
  it('a table of 19 3/4 in, 25 in high, takes 70 3/4 in: two lengths, 141 1/2 in, 4 yd', () => {
    const [across] = inPlace(table(19.75), 25.5);
    expect([across, across! / 2]).toEqual([70.75, 35.375]);
    const cloth = widthsOf(70.75, 45);
    expect([cloth.panels, cloth.inches, toBuy(cloth.yards)]).toEqual([2, 141.5, 4]);
  });

  // Common practice: 85 in from two widths, 170 in, 4.72 yd, so 4 3/4. Known slip: a seller divides by the width alone and by 36.
  it('85 in from fabric of 45 in take 4.72 yd, not 2 ÷ 36', () => {
    const { panels, yards } = widthsOf(85, 45);
    expect(panels).toBe(2);
    expect(yards).toBeCloseTo(4.72, 2);
    expect(toBuy(yards)).toBe(4.75);
    expect(panels / 36).toBeCloseTo(0.06, 2);
  });

  // Published: STA09, floor cloths from fabric of 45 in: a table of 54 in takes 9 1/2 yd. Known slip: it gives 5 yd for one of 30 in, but
  // two widths are less than the 90 in across, so it takes three, 7 1/2 yd.
  it.each([
    [54, 114, 9.5],
    [30, 90, 7.5],
  ])('a table of %d in takes a floor cloth of %d in and %d yd', (diameter, across, yards) => {
    expect(inPlace(table(diameter), 30)[0]).toBe(across);
    const cloth = widthsOf(across, 45);
    expect([cloth.panels, toBuy(cloth.yards)]).toEqual([3, yards]);
  });

  // Published: HSB84, widths are the diameter by the fabric less 1 in, rounded up. The outer two have one seam only, so one width fewer
  // is enough where the diameter is just past a multiple.
  it('takes the widths of the rule in the sewing book, or one fewer where they reach', () => {
    fc.assert(
      fc.property(fc.integer({ min: 46, max: 180 }), fc.integer({ min: 36, max: 60 }), (across, fabric) => {
        const rule = Math.ceil(across / (fabric - 1));
        const { panels } = widthsOf(across, fabric);
        expect(panels).toBe(across <= (rule - 1) * (fabric - 1) + 1 ? rule - 1 : rule);
      }),
    );
  });

  // Known slip: a page cuts a circle of 44 in from 1 1/4 yd of fabric. Its usable width of 42 in gives one of 42 in.
  it('44 in across does not come from one width of 42 in', () => {
    expect([widthsOf(42, 42).panels, widthsOf(44, 42).panels]).toEqual([1, 2]);
  });
});

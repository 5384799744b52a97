import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { PrairiePointsInput } from '#core/calculators/edge-finish/prairie-points/input';
import { prairiePoints } from '#core/calculators/edge-finish/prairie-points/prairie-points';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';

const square = (side: number): Outline => ({ shape: 'square', side: inches(side) });
const none = lengthFromUnits(0);
const starting = (outline: Outline, change: Partial<PrairiePointsInput> = {}): PrairiePointsInput => ({
  ...prairiePoints.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
  ...change,
});
const detailsOf = (outline: Outline, change: Partial<PrairiePointsInput> = {}) =>
  answerOf(prairiePoints, starting(outline, change)).details;

describe('prairie points against figures in print', () => {
  // Published: MCC, a square of 2 x height + 1/2: for 2 in it is 4 1/2 (printed as 4 /12).
  it('2 in high are cut from squares of 4 1/2 in', () => {
    expect(detailsOf(square(60), { height: inches(2) }).square).toBe(inches(4.5));
  });

  // Known slip: two pages say that the base is half of the finished height. Derived: the base is twice the height.
  it('are twice as wide as high, and lose 1/2 in of that and 1/4 in of height to the seam', () => {
    const { square: cut, base, height } = detailsOf(square(60), { height: inches(2) });
    expect([base, height]).toEqual([cut - inches(1 / 2), cut / 2 - inches(1 / 4)]);
    expect(base).toBe(2 * height);
  });

  // Derived: a side of 60 in, squares of 4 in, overlap of 1/2 in at least: 20 points, 2.974 in apart.
  it('of 4 in squares along 60 in are 20, 2.974 in apart', () => {
    const details = detailsOf(square(60), { height: inches(1.75), overlap: inches(1 / 2) });
    expect(details.square).toBe(inches(4));
    expect(details.sides[0]?.points).toBe(20);
    expect(details.sides[0]!.pitch / UNITS_PER_INCH).toBeCloseTo(2.974, 3);
    expect(details.points).toBe(80);
  });

  // Known slip: a page divides the edge by the square, 280 / 3 = 94. Derived: to meet at the seam they are 2 1/2 in apart, 112.
  it('of 3 in squares around 280 in are 112', () => {
    const diameter = lengthFromUnits(Math.floor(inches(280) / Math.PI));
    const details = detailsOf({ shape: 'circle', diameter }, { height: inches(1.25), overlap: none });
    expect(details.square).toBe(inches(3));
    expect(details.points).toBe(112);
  });
});

/** Width of a triangle with this base and half of it as height, at a height above its base, cut by a clipping library. */
function widthAbove(base: number, above: number): number {
  const triangle: [number, number][] = [
    [0, 0],
    [base, 0],
    [base / 2, base / 2],
  ];
  const upper: [number, number][] = [
    [-base, above],
    [2 * base, above],
    [2 * base, base],
    [-base, base],
  ];
  const [part] = polygonClipping.intersection([triangle], [upper]);
  const xs = (part?.[0] ?? []).map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs);
}

describe('a folded square', () => {
  it('is as wide at the seam as a clipping library finds, and as high as asked or a step more', () => {
    const anyHeight = fc.integer({ min: inches(1 / 4), max: inches(6) }).map(lengthFromUnits);
    fc.assert(
      fc.property(anyHeight, fc.integer({ min: 1, max: 8 }), (height, sixteenths) => {
        const seamAllowance = inches(sixteenths / 16);
        const input = { height, seamAllowance, overlap: none, fabricWidth: inches(42) };
        const details = detailsOf(square(100), input);
        expect(details.base).toBeCloseTo(widthAbove(details.square, seamAllowance), 6);
        expect(details.height).toBeGreaterThanOrEqual(height);
        expect(details.height - height).toBeLessThan(inches(1 / 16));
      }),
    );
  });
});

describe('points along the edge', () => {
  const anyPoint = fc.record({
    height: fc.integer({ min: inches(1 / 2), max: inches(2) }).map(lengthFromUnits),
    overlap: fc.integer({ min: 0, max: inches(1 / 2) }).map(lengthFromUnits),
  });

  it('cover the seam from corner to corner, overlap by what was asked, and one fewer would not', () => {
    fc.assert(
      fc.property(anyOutline(40, 120), anyPoint, (outline, change) => {
        const { sides, base, isCurve } = detailsOf(outline, change);
        for (const { length, points, pitch, overlap } of sides) {
          const ends = Array.from({ length: points }, (_, index) => index * pitch + base);
          expect(ends.at(-1)).toBeCloseTo(isCurve ? length - pitch + base : length, 3);
          expect(overlap).toBeGreaterThanOrEqual(change.overlap - 1e-3);
          const fewer = isCurve ? length / (points - 1) : (length - base) / (points - 2);
          if (points > 2) expect(base - fewer).toBeLessThan(change.overlap + 1e-3);
        }
        expect(sides.reduce((sum, side) => sum + side.length, 0)).toBeCloseTo(outlinePerimeter(outline), 3);
        expect(sides.reduce((sum, side) => sum + side.points, 0)).toBe(detailsOf(outline, change).points);
      }),
    );
  });

  it('are never fewer on a longer edge or with more overlap, and take no less fabric', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 100 }),
        fc.integer({ min: 0, max: 20 }),
        anyPoint,
        (side, more, change) => {
          const one = detailsOf(square(side), change);
          const longer = detailsOf(square(side + more), change);
          expect(longer.points).toBeGreaterThanOrEqual(one.points);
          expect(longer.fabricToBuy).toBeGreaterThanOrEqual(one.fabricToBuy);
          const tucked = { ...change, overlap: lengthFromUnits(change.overlap + more * 100) };
          expect(detailsOf(square(side), tucked).points).toBeGreaterThanOrEqual(one.points);
        },
      ),
    );
  });
});

describe('the squares', () => {
  it('on the shopping list, in the cutting plan and in the figures are the points', () => {
    fc.assert(
      fc.property(anyOutline(40, 120), (outline) => {
        const input = starting(outline, { safetyExtra: 0 });
        const { details, figures } = answerOf(prairiePoints, input);
        const [need] = prairiePoints.needs!(input, details, inches(42));
        expect(lengthFor(need!.amount, { width: inches(42), turning: 'any' })).toBe(details.fabric);
        expect(prairiePoints.cuts!(input, details)).toMatchObject([
          { width: details.square, length: details.square, count: details.points },
        ]);
        expect(figures[2]?.quantity).toMatchObject({ exact: details.fabric, rounded: details.fabricToBuy });
        expect(details.perStrip * details.strips).toBeGreaterThanOrEqual(details.points);
        expect(details.perStrip * (details.strips - 1)).toBeLessThan(details.points);
      }),
    );
  });

  it('are refused where a point overlaps its whole width, fits no side, comes from no fabric, or there are too many', () => {
    const refused = (side: number, change: Partial<PrairiePointsInput>) =>
      refusalOf(prairiePoints, starting(square(side), change));
    // By hand: 1 1/2 in high is 3 in wide at the seam.
    expect(refused(60, { overlap: inches(3) })).toMatchObject({
      code: 'overlap-too-large',
      field: ['overlap'],
    });
    expect(refused(2.9, {})).toMatchObject({ code: 'side-too-short', field: ['height'] });
    expect(detailsOf(square(3)).sides[0]).toMatchObject({ points: 1, overlap: 0 });
    expect(refused(60, { height: inches(2), fabricWidth: inches(4) })).toMatchObject({
      code: 'square-too-large',
    });
    expect(refused(300, { overlap: inches(2.9) })).toMatchObject({
      code: 'too-many-points',
      field: ['overlap'],
    });
    const small: Outline = { shape: 'circle', diameter: inches(2) };
    expect(refusalOf(prairiePoints, starting(small))).toMatchObject({ code: 'side-too-short' });
  });

  it('lists sides alike in one row, and says how corners and curves are turned', () => {
    const oblong: Outline = { shape: 'rectangle', width: inches(40), length: inches(60) };
    const { tables, notes } = answerOf(prairiePoints, starting(oblong));
    expect(tables[0]?.rows.map((row) => row[0])).toMatchObject([{ rounded: 2 }, { rounded: 2 }]);
    expect(notes[0]?.says).toMatch(/corner/);
    const round = answerOf(prairiePoints, starting({ shape: 'circle', diameter: inches(40) }));
    expect(round.notes[0]?.says).toMatch(/curve/);
  });
});

import { describe, expect, it } from 'vitest';
import { layBiasStrips, slantedJoinCost } from '#core/calculators/binding/bias-strips/work';
import { scrappyBinding } from '#core/calculators/binding/scrappy-binding/scrappy-binding';
import { holeSize } from '#core/calculators/center/hole-size/hole-size';
import { curveStrain } from '#core/calculators/curves/curve-strain/curve-strain';
import { outlinePoints } from '#core/calculators/outline/outline-measures';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';

const none = lengthFromUnits(0);
const project = (outline: Outline) => ({
  outline,
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
});
const ring = project({ shape: 'circle', diameter: inches(50) });

/** The radius of a hole that is this long around, as measured: nothing is added. */
const radiusAround = (length: number) =>
  answerOf(holeSize, {
    ...holeSize.fromProject(ring),
    from: 'around',
    measure: inches(length),
    ease: none,
    bindingThickness: none,
    washPercent: 0,
  }).details.exactDiameter /
  2 /
  UNITS_PER_INCH;

/** How long the edge is along part of a circle. */
const along = (radius: number, arc: number) =>
  answerOf(curveStrain, {
    ...curveStrain.fromProject(ring),
    side: 'outside',
    radius: inches(radius),
    arc,
    seamAllowance: inches(1 / 8),
  }).details.edgeLength / UNITS_PER_INCH;

describe('the radius of a circle from its length', () => {
  // Published: SPM, 44 in around has a radius of 7.0 in. Its 110 cm at 6.28 are 17.52 cm, exactly 17.51; 114 cm are 18.15.
  // Published: BUR, 26 + 2 · 7 5/8 = 41 1/4 in have 6.57 (it prints 6 1/2).
  it.each([
    [44, 7],
    [110 / 2.54, 17.51 / 2.54],
    [114 / 2.54, 18.15 / 2.54],
    [26 + 2 * 7.625, 6.57],
  ])('of %f in is %f', (length, radius) => {
    expect(Math.abs(radiusAround(length) - radius)).toBeLessThan(0.005);
  });

  // Common practice: 26 in along a full circle take a radius of 4.14 in, along a half 8.28, a third 12.41 and a quarter 16.55.
  it.each([
    [360, 4.14],
    [180, 8.28],
    [120, 12.41],
    [90, 16.55],
  ])('26 in along %d° of it', (arc, radius) => {
    expect(Math.abs(along(radius, arc) - 26)).toBeLessThan(0.04);
  });

  // Known slip: a cloth for 32 in, folded in four, drawn with 8 in as the straight line from fold to fold instead of along the arc: the
  // circle is 35.54 in around, 3.5 too much.
  it('is not that of a quarter whose chord is a quarter of it', () => {
    const [right, wrong] = [radiusAround(32), 8 / Math.SQRT2];
    expect(along(right, 90)).toBeCloseTo(8, 2);
    expect(along(wrong, 360)).toBeCloseTo(35.54, 1);
  });

  // Derived: 22/7 is 0.0402% more than π and 3.14 is 0.0507% less. What the notebook takes is between them.
  it('lies between those by 22/7 and by 3.14', () => {
    const exact = radiusAround(300);
    expect(exact / ((300 / 2) * (7 / 22))).toBeCloseTo(1.000402, 6);
    expect(exact / (300 / 2 / 3.14)).toBeCloseTo(0.999493, 6);
  });
});

describe('octagons in print', () => {
  // Common practice: an octagon of 10 in whose corners are cut off at 3 in has sides of 4 and 3√2 = 4.243; a page says "roughly 4".
  // Derived: in a regular one the legs are 2.929 in, and 1/2 in more as cut.
  it('10 in across has corners with legs of 2.929 in', () => {
    const unit = { unit: 'octagon-corners', side: inches(10), corner: 'regular' } as const;
    const { patches } = answerOf(patchSize, { ...patchSize.fromProject(ring), unit }).details;
    const corner = patches.find(({ name }) => name === 'Corner square')!;
    expect(corner.acrossExact / UNITS_PER_INCH).toBeCloseTo(2.929 + 1 / 2, 3);
    expect([10 - 2 * 3, 3 * Math.SQRT2]).toEqual([4, expect.closeTo(4.243, 3)]);
  });

  // Published: DIY-OCT, for sides of 10 in the square is 24.14 in, and from its corner to the cut opposite it is 29.14 in.
  it('with sides of 10 in is cut from a square of 24.14 in, 29.14 in from each corner', () => {
    const acrossFlats = inches(10 * (1 + Math.SQRT2));
    expect(acrossFlats / UNITS_PER_INCH).toBeCloseTo(24.14, 2);
    const corners = outlinePoints({ shape: 'octagon', acrossFlats });
    const next = corners[1]!;
    expect(Math.hypot(next.x - corners[0]!.x, next.y - corners[0]!.y) / UNITS_PER_INCH).toBeCloseTo(10, 3);
    const [left, upper] = [Math.min(...corners.map(({ x }) => x)), Math.min(...corners.map(({ y }) => y))];
    const diagonal = Math.max(...corners.map(({ x, y }) => (x - left + y - upper) / Math.SQRT2));
    expect(diagonal / UNITS_PER_INCH).toBeCloseTo(29.14, 2);
  });
});

describe('strips of bias in print', () => {
  // Common practice: once around and one strip width: a square of 5 in with a strip of 2 in takes 22 in.
  it('around a square of 5 in closes with 22 in, and not with less', () => {
    const around = project({ shape: 'square', side: inches(5) });
    const missing = (length: number) =>
      answerOf(scrappyBinding, {
        ...scrappyBinding.fromProject(around),
        stripWidth: inches(2),
        overlap: inches(2),
        strips: [{ length: inches(length), count: 1 }],
      }).details.missing;
    expect(missing(22)).toBe(0);
    expect(missing(21.875)).toBeGreaterThan(0);
  });

  // Known slip: a page has "right around 12" in from 1/4 yd cut at 45°. Derived: its edge is 12.73 in, of which 10.48 are left with both
  // ends cut square at 2 1/4 in.
  it('from a quarter yard is 12.73 in along its edge and 10.48 with square ends', () => {
    const [strip, width] = [inches(2.25), inches(42)];
    const { strips } = layBiasStrips({
      width,
      length: inches(9),
      strip,
      seam: inches(1 / 4),
      shortest: strip,
    });
    const longest = Math.max(...strips.map(({ middle }) => middle)) / UNITS_PER_INCH;
    expect(longest).toBeCloseTo(12.73, 2);
    expect(longest - 2.25).toBeCloseTo(10.48, 2);
    expect(slantedJoinCost(inches(1 / 4)) / UNITS_PER_INCH).toBeCloseTo(0.7071, 4);
  });
});

import Fraction from 'fraction.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerExtra, stitchStopBefore } from '#core/calculators/binding/outer-binding/corner-miters';
import { smallestStep } from '#core/calculators/binding/smallest-step';
import { joinCost, joinedLength, stripsNeeded } from '#core/calculators/binding/strip-joins';
import { coverOf, foldReach, frontWidthOf, stripWidthFor } from '#core/calculators/binding/strip-width';
import { growPolygon } from '#core/geometry/offset-polygon';
import { type Point, pointDistance } from '#core/geometry/point';
import { lengthFromInches as inches } from '#core/units/length';

describe('strips joined end to end', () => {
  // Derived: n strips closed in a loop with diagonal joins give n(U - w), so a loop adds one join to the need.
  it.each([
    [400, 40, 2.5, 11, 10],
    [264, 40, 2.5, 8, 7],
  ])(
    'around %d in, from %d in strips %d in wide, are %d with diagonal joins and %d with no joins counted',
    (edge, strip, wide, withJoins, withoutJoins) => {
      const cost = joinCost('diagonal', wide, 1 / 4);
      expect(stripsNeeded(edge + cost, strip, cost)).toBe(withJoins);
      expect(stripsNeeded(edge, strip, 0)).toBe(withoutJoins);
    },
  );

  it('are four of 42 in around 154 in, by the plain rule without joins (common practice)', () => {
    expect(stripsNeeded(154, 42, 0)).toBe(4);
  });

  it('around 180 in are five; a lesson added up 176 in and cut four, which is too few even for that (known slip)', () => {
    expect(stripsNeeded(180, 42, 0)).toBe(5);
    expect(stripsNeeded(176, 42, 0)).toBe(5);
    expect(joinedLength(4, 42, 0)).toBeLessThan(176);
  });

  it('lose a strip width to a diagonal join and two seam allowances to a straight one (common practice)', () => {
    expect(joinCost('diagonal', 2.5, 0.25)).toBe(2.5);
    expect(joinCost('straight', 2.5, 0.25)).toBe(0.5);
    expect(joinedLength(3, 42, 2.5)).toBe(3 * 42 - 2 * 2.5);
    expect(joinedLength(1, 42, 2.5)).toBe(42);
  });

  it('are the fewest that reach, by brute force and by exact fractions', () => {
    const anyJob = fc.record({
      needed: fc.integer({ min: 1, max: 4_000_000 }),
      strip: fc.integer({ min: 100_000, max: 400_000 }),
      cost: fc.integer({ min: 0, max: 60_000 }),
    });
    fc.assert(
      fc.property(anyJob, ({ needed, strip, cost }) => {
        let count = 1;
        while (joinedLength(count, strip, cost) < needed) count += 1;
        expect(stripsNeeded(needed, strip, cost)).toBe(count);
        const exact = new Fraction(needed)
          .sub(cost)
          .div(strip - cost)
          .ceil();
        expect(count).toBe(Math.max(1, Number(exact)));
      }),
    );
  });

  it('do not exist when a strip is no longer than its join', () => {
    expect(stripsNeeded(100, 4, 4)).toBeNull();
  });
});

describe('the width of the strip', () => {
  const edge = { seam: 1 / 4, thickness: 1 / 8, cover: 1 / 8 };

  it('of a double fold is 6s + 2t + 2c: 2 in for a quarter-inch seam; single, 4s + t + c (derived)', () => {
    expect(stripWidthFor('double', edge)).toBe(2);
    expect(stripWidthFor('single', edge)).toBe(1.25);
  });

  it('of a single fold is four times the finished width with no loft and no cover (LEW: 1/2 in takes 2 in)', () => {
    expect(stripWidthFor('single', { seam: 1 / 2, thickness: 0, cover: 0 })).toBe(2);
  });

  it('is between two published rules that disagree: twice (twice the width plus 1/4 in), SUI, and four times plus 1 in', () => {
    for (const finished of [1 / 4, 3 / 8, 1 / 2]) {
      const derived = stripWidthFor('double', { seam: finished, thickness: 1 / 16, cover: 1 / 8 });
      expect(derived).toBeGreaterThanOrEqual((2 * finished + 1 / 4) * 2);
      expect(Math.abs(derived - (4 * finished + 1))).toBeLessThanOrEqual(0.5);
    }
  });

  it('and the front it fits are inverse, and so are strip and cover', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('double', 'single'),
        fc.record({
          seam: fc.integer({ min: 100, max: 10_000 }),
          thickness: fc.integer({ min: 0, max: 4_000 }),
          cover: fc.integer({ min: 0, max: 4_000 }),
        }),
        (fold, bound) => {
          const strip = stripWidthFor(fold, bound);
          expect(frontWidthOf(fold, strip, bound)).toBeCloseTo(bound.seam, 6);
          expect(coverOf(fold, strip, bound)).toBeCloseTo(bound.cover, 6);
          expect(foldReach(fold, strip, bound.seam)).toBeCloseTo(
            2 * bound.seam + bound.thickness + bound.cover,
            6,
          );
        },
      ),
    );
  });

  it('of 2 1/2 in with a quarter-inch seam covers 3/8 in on the back; 2 in with a 3/8 in seam does not reach it (derived)', () => {
    expect(coverOf('double', 2.5, edge)).toBeCloseTo(3 / 8, 12);
    expect(coverOf('double', 2, { seam: 3 / 8, thickness: 1 / 8 })).toBeLessThan(0);
  });
});

describe('mitered corners', () => {
  it('stop the seam one seam allowance before a right corner and take no extra strip (derived)', () => {
    expect(stitchStopBefore(90, 0.25)).toBeCloseTo(0.25, 12);
    expect(cornerExtra(90, 0.25)).toBe(0);
  });

  it('take two seam allowances more at a right inner corner (derived)', () => {
    expect(cornerExtra(270, 0.25)).toBeCloseTo(0.5, 12);
    expect(stitchStopBefore(270, 0.25)).toBe(0);
  });

  it('match the corners of the edge moved in by the seam, for any angle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 35, max: 150 }), (degrees) => {
        const turn = (degrees * Math.PI) / 180;
        const corner: Point = { x: 0, y: 0 };
        const triangle = [corner, { x: 100, y: 0 }, { x: 100 * Math.cos(turn), y: 100 * Math.sin(turn) }];
        const seamCorner = growPolygon(triangle, -1)[0]!;
        expect(stitchStopBefore(degrees, 1)).toBeCloseTo(seamCorner.x, 9);
        expect(pointDistance(corner, seamCorner)).toBeCloseTo(Math.hypot(1, seamCorner.x), 9);
        const outerCorner = growPolygon(triangle, 1)[0]!;
        expect(cornerExtra(360 - degrees, 1)).toBeCloseTo(-2 * outerCorner.x, 9);
      }),
    );
  });
});

describe('the smallest whole step', () => {
  it('is the one a step-by-step search finds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 20 }), (threshold, step) => {
        const found = smallestStep((size) => size >= threshold, step, 400);
        const walked = Array.from({ length: Math.floor(400 / step) }, (_, index) => (index + 1) * step);
        expect(found).toBe(walked.find((size) => size >= threshold) ?? null);
      }),
    );
  });

  it('does not exist when the largest is less than a step', () => {
    expect(smallestStep(() => true, inches(1), inches(1 / 2))).toBeNull();
  });
});

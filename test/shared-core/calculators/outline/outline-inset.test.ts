import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineArea, outlineInsetPerimeter } from '#core/calculators/outline/outline-inset';
import { outlinePerimeter, outlinePoints } from '#core/calculators/outline/outline-measures';
import type { Outline } from '#core/domain/outline';
import { polygonArea } from '#core/geometry/polygon';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { anyOutline } from '#test/helpers/measurements';
import { perimeterMovedIn } from '../binding/clipped';

const SQUARE_INCH = UNITS_PER_INCH ** 2;

describe('the line inside an edge', () => {
  it('of straight-sided pieces is as long as the polygon that a geometry library moves in', () => {
    const straight = anyOutline(12, 100).filter(({ shape }) =>
      ['square', 'rectangle', 'hexagon', 'octagon'].includes(shape),
    );
    fc.assert(
      fc.property(straight, fc.integer({ min: 0, max: inches(2) }), (outline, inset) => {
        expect(outlineInsetPerimeter(outline, inset)).toBeCloseTo(
          perimeterMovedIn(outlinePoints(outline), inset),
          0,
        );
      }),
    );
  });

  it('of a circle is 2π times what is left of its radius', () => {
    const circle: Outline = { shape: 'circle', diameter: inches(24) };
    expect(outlineInsetPerimeter(circle, inches(1))! / UNITS_PER_INCH).toBeCloseTo(2 * Math.PI * 11, 9);
    expect(outlineInsetPerimeter(circle, inches(12))).toBeNull();
    expect(outlineInsetPerimeter(circle, inches(11.9))).not.toBeNull();
  });

  it('of an ellipse is 2π times the inset shorter, as of every curve without corners, down to its tightest bend', () => {
    // 16 by 32 in: the tightest radius, at the ends of the long axis, is 8² ÷ 16 = 4 in (derived).
    const oval: Outline = { shape: 'ellipse', width: inches(32), length: inches(16) };
    expect((outlinePerimeter(oval) - outlineInsetPerimeter(oval, inches(3))!) / UNITS_PER_INCH).toBeCloseTo(
      6 * Math.PI,
      9,
    );
    expect(outlineInsetPerimeter(oval, inches(4))).toBeNull();
    expect(outlineInsetPerimeter(oval, inches(4) - 1)).not.toBeNull();
  });

  it('of rounded corners is that of the rounded rectangle inside, and of a plain one past the radius', () => {
    const outline: Outline = {
      shape: 'rounded',
      width: inches(40),
      length: inches(60),
      cornerRadius: inches(5),
    };
    const at = (inset: number) => outlineInsetPerimeter(outline, inches(inset))! / UNITS_PER_INCH;
    expect(at(2)).toBeCloseTo(30 + 50 + 30 + 50 + 2 * Math.PI * 3, 9);
    expect(at(5)).toBeCloseTo(160, 9);
    expect(at(7)).toBeCloseTo(2 * (26 + 46), 9);
  });

  it('of a list of sides is never short: nobody gave the angles, so nothing is taken off', () => {
    const sides = [10, 12, 11].map((side) => inches(side));
    const outline: Outline = { shape: 'sides', sides, width: inches(12), length: inches(10) };
    expect(outlineInsetPerimeter(outline, inches(1))).toBe(inches(33));
  });

  it('is none where the piece is no wider than the line takes', () => {
    const strip: Outline = { shape: 'rectangle', width: inches(4), length: inches(40) };
    expect(outlineInsetPerimeter(strip, inches(2))).toBeNull();
    expect(outlineInsetPerimeter(strip, inches(2) - 1)).not.toBeNull();
    expect(outlineInsetPerimeter({ ...strip, width: inches(40), length: inches(4) }, inches(2))).toBeNull();
  });
});

describe('the area of an outline', () => {
  it('is π/4 of its rectangle for a circle and an ellipse (derived)', () => {
    expect(outlineArea({ shape: 'circle', diameter: inches(10) }) / SQUARE_INCH).toBeCloseTo(25 * Math.PI, 9);
    const oval = outlineArea({ shape: 'ellipse', width: inches(10), length: inches(20) });
    expect(oval / SQUARE_INCH).toBeCloseTo(50 * Math.PI, 9);
  });

  it('of rounded corners is a cross and one circle (derived)', () => {
    const area = outlineArea({
      shape: 'rounded',
      width: inches(40),
      length: inches(60),
      cornerRadius: inches(5),
    });
    expect(area / SQUARE_INCH).toBeCloseTo(30 * 60 + 2 * 5 * 50 + 25 * Math.PI, 9);
  });

  it('is that of its corners where the sides are straight', () => {
    const straight = anyOutline(4, 100).filter(({ shape }) =>
      ['square', 'rectangle', 'hexagon', 'octagon'].includes(shape),
    );
    fc.assert(
      fc.property(straight, (outline) => {
        const area = Math.abs(polygonArea(outlinePoints(outline)));
        expect(outlineArea(outline) / area).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of a list of sides is its rectangle, never too little', () => {
    const outline: Outline = {
      shape: 'sides',
      sides: [3, 4, 5].map((side) => inches(side)),
      width: inches(4),
      length: inches(3),
    };
    expect(outlineArea(outline)).toBe(12 * SQUARE_INCH);
  });
});

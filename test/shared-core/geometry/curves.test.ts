import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleArea, circlePerimeter } from '#core/geometry/circle';
import { ellipseArea, ellipsePerimeter } from '#core/geometry/ellipse';
import { polygonArea, polygonPerimeter } from '#core/geometry/polygon';
import {
  regularPolygonArea,
  regularPolygonCircumradius,
  regularPolygonCorners,
  regularPolygonFromInradius,
  regularPolygonInradius,
  regularPolygonPerimeter,
} from '#core/geometry/regular-polygon';

/** Adaptive Simpson integration: halves the span until two estimates agree. It shares nothing with the formulas under test. */
function integrate(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  const simpson = (a: number, fa: number, b: number, fb: number, fm: number) =>
    ((b - a) / 6) * (fa + 4 * fm + fb);
  const refine = (
    a: number,
    fa: number,
    b: number,
    fb: number,
    fm: number,
    whole: number,
    tol: number,
    depth: number,
  ): number => {
    const m = (a + b) / 2;
    const [fl, fr] = [f((a + m) / 2), f((m + b) / 2)];
    const [left, right] = [simpson(a, fa, m, fm, fl), simpson(m, fm, b, fb, fr)];
    const off = left + right - whole;
    if (depth === 0 || Math.abs(off) <= 15 * tol) return left + right + off / 15;
    return (
      refine(a, fa, m, fm, fl, left, tol / 2, depth - 1) + refine(m, fm, b, fb, fr, right, tol / 2, depth - 1)
    );
  };
  const [fa, fb, fm] = [f(from), f(to), f((from + to) / 2)];
  return refine(from, fa, to, fb, fm, simpson(from, fa, to, fb, fm), tolerance, 40);
}

describe('an ellipse', () => {
  const quarter = (a: number, b: number) =>
    integrate((t) => Math.hypot(a * Math.sin(t), b * Math.cos(t)), 0, Math.PI / 2, 1e-15 * a);

  it.each([
    [1, 1],
    [1, 0.99],
    [1, 0.9],
    [1, 0.5],
    [1, 0.1],
    [1, 0.01],
    [1, 0.001],
    [36, 24],
    [243_840, 406_400],
  ])('with half axes %d and %d has the edge that numeric integration finds', (a, b) => {
    expect(ellipsePerimeter(a, b) / (4 * quarter(a, b))).toBeCloseTo(1, 12);
  });

  it('has the edge that numeric integration finds, with any axes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 1000 }), fc.integer({ min: 20, max: 1000 }), (a, b) => {
        expect(Math.abs(ellipsePerimeter(a, b) / (4 * quarter(a, b)) - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 50 },
    );
  });

  it('is a circle if its axes are equal, and twice its long axis if the other is 0', () => {
    expect(ellipsePerimeter(3, 3)).toBeCloseTo(circlePerimeter(3), 12);
    expect(ellipseArea(3, 3)).toBe(circleArea(3));
    expect(ellipsePerimeter(3, 0)).toBe(12);
    expect(ellipsePerimeter(0, 0)).toBe(0);
    expect(ellipsePerimeter(1, 1e-9)).toBeCloseTo(4, 12);
  });

  it('has the same edge with its axes swapped, and a longer edge if an axis grows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 1000 }), (a, b) => {
        expect(ellipsePerimeter(a, b)).toBe(ellipsePerimeter(b, a));
        expect(ellipsePerimeter(8128 * a, 8128 * b) / (8128 * ellipsePerimeter(a, b))).toBeCloseTo(1, 13);
        expect(ellipsePerimeter(a + 1, b)).toBeGreaterThan(ellipsePerimeter(a, b));
      }),
    );
  });

  it.each([
    [-1, 1],
    [1, -1],
    [NaN, 1],
    [1, Infinity],
  ])('refuses half axes %d and %d', (a, b) => {
    expect(() => ellipsePerimeter(a, b)).toThrow(RangeError);
    expect(() => ellipseArea(a, b)).toThrow(RangeError);
  });
});

describe('a circle', () => {
  it('has an edge of 2πr', () => {
    expect(circlePerimeter(2)).toBeCloseTo(4 * Math.PI, 14);
  });

  it('refuses a radius that is negative or not a number', () => {
    for (const radius of [-1, NaN, Infinity]) {
      expect(() => circlePerimeter(radius)).toThrow(RangeError);
      expect(() => circleArea(radius)).toThrow(RangeError);
    }
  });
});

describe('a regular polygon', () => {
  it('has a circumradius of one side if it has six sides, and an inradius of half a side if it has four', () => {
    expect(regularPolygonCircumradius({ sides: 6, side: 3 })).toBeCloseTo(3, 14);
    expect(regularPolygonInradius({ sides: 4, side: 3 })).toBeCloseTo(1.5, 14);
  });

  it('has the same side from its inradius, and the same edge and area by its corners', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 40 }),
        fc.double({ min: 0.1, max: 1e6, noNaN: true }),
        (sides, side) => {
          const shape = { sides, side };
          expect(regularPolygonFromInradius(sides, regularPolygonInradius(shape)).side / side).toBeCloseTo(
            1,
            12,
          );
          const corners = regularPolygonCorners(shape, { x: 5, y: -7 }, 0.3);
          expect(corners).toHaveLength(sides);
          expect(polygonPerimeter(corners) / regularPolygonPerimeter(shape)).toBeCloseTo(1, 9);
          expect(polygonArea(corners) / regularPolygonArea(shape)).toBeCloseTo(1, 8);
        },
      ),
    );
  });

  it.each([2, 2.5, NaN, -3])('refuses %d sides', (sides) => {
    expect(() => regularPolygonFromInradius(sides, 1)).toThrow(RangeError);
  });

  it('refuses a size that is negative or not a number', () => {
    for (const radius of [-1, NaN, Infinity])
      expect(() => regularPolygonFromInradius(6, radius)).toThrow(RangeError);
  });
});

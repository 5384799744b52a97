import ClipperLib from 'clipper-lib';
import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { growPolygon } from '#core/geometry/offset-polygon';
import { type Point, pointDistance } from '#core/geometry/point';
import {
  type Polygon,
  polygonArea,
  polygonPerimeter,
  polygonSides,
  polygonSignedArea,
} from '#core/geometry/polygon';
import { regularPolygonCorners, regularPolygonFromInradius } from '#core/geometry/regular-polygon';
import { convexPolygon, starShapedPolygon } from '#test/helpers/arbitraries';
import { rotatePoint } from '#test/helpers/rotate-point';

const at = (x: number, y: number): Point => ({ x, y });

/** The area by the offset of clipper-lib with unlimited miters, on the integer grid it works on. */
function areaByClipper(polygon: Polygon, distance: number): number {
  const path = polygon.map(({ x, y }) => ({ X: Math.round(x), Y: Math.round(y) }));
  const offset = new ClipperLib.ClipperOffset(1e6, 0.25);
  offset.AddPath(path, ClipperLib.JoinType.jtMiter, ClipperLib.EndType.etClosedPolygon);
  const grown: ClipperLib.Paths = [];
  offset.Execute(grown, distance);
  return grown.reduce((sum, ring) => sum + ClipperLib.Clipper.Area(ring), 0);
}

function onGrid(polygon: Polygon): Polygon {
  return polygon.map(({ x, y }) => at(Math.round(x), Math.round(y)));
}

describe('a finished patch grown by the seam', () => {
  const s = 0.25;

  it('is a square two seams larger', () => {
    const grown = growPolygon([at(0, 0), at(3, 0), at(3, 3), at(0, 3)], s);
    expect(grown).toEqual([at(-s, -s), at(3 + s, -s), at(3 + s, 3 + s), at(-s, 3 + s)]);
  });

  it('has legs longer by s(2 + √2) if it is a half-square triangle, and a base longer by s(2 + 2√2) if it is a quarter-square triangle', () => {
    const half = growPolygon([at(0, 0), at(3, 0), at(0, 3)], s);
    expect(polygonPerimeter(half) / (2 + Math.SQRT2)).toBeCloseTo(3 + s * (2 + Math.SQRT2), 12);
    const quarter = growPolygon([at(0, 0), at(6, 0), at(3, 3)], s);
    expect(pointDistance(quarter[0] ?? at(0, 0), quarter[1] ?? at(0, 0))).toBeCloseTo(
      6 + s * (2 + 2 * Math.SQRT2),
      12,
    );
  });

  // Derived, at a seam of 5 to 10 mm: additions for half- and quarter-square triangles, to the hundredth of a millimeter.
  it.each([
    [5, 17.07, 24.14],
    [6, 20.49, 28.97],
    [6.35, 21.68, 30.66],
    [7.5, 25.61, 36.21],
    [10, 34.14, 48.28],
  ])('at %d mm adds %d mm to a half-square and %d mm to a quarter-square triangle', (seam, half, quarter) => {
    const [a, b] = growPolygon([at(0, 0), at(100, 0), at(0, 100)], seam);
    expect(pointDistance(a ?? at(0, 0), b ?? at(0, 0)) - 100).toBeCloseTo(half, 2);
    const [c, d] = growPolygon([at(0, 0), at(100, 0), at(50, 50)], seam);
    expect(pointDistance(c ?? at(0, 0), d ?? at(0, 0)) - 100).toBeCloseTo(quarter, 2);
  });

  it('is a hexagon one seam larger on every side if it was a hexagon', () => {
    const hexagon = regularPolygonCorners(regularPolygonFromInradius(6, 3));
    const expected = regularPolygonCorners(regularPolygonFromInradius(6, 3 + s));
    growPolygon(hexagon, s).forEach((corner, index) => {
      expect(pointDistance(corner, expected[index] ?? at(0, 0))).toBeLessThan(1e-12);
    });
  });

  it('does not depend on the direction of its corners', () => {
    fc.assert(
      fc.property(convexPolygon, (polygon) => {
        const forth = growPolygon(polygon, 2032);
        const back = growPolygon([...polygon].reverse(), 2032);
        expect(polygonSignedArea(back)).toBeCloseTo(-polygonSignedArea(forth), 2);
        expect(Math.sign(polygonSignedArea(back))).toBe(-1);
      }),
    );
  });

  it('has every side exactly one seam from where it was', () => {
    fc.assert(
      fc.property(starShapedPolygon, (polygon) => {
        const grown = growPolygon(polygon, 2032);
        polygonSides(polygon).forEach(({ from, to }, index) => {
          for (const corner of [grown[index], grown[(index + 1) % grown.length]]) {
            if (corner === undefined) return expect.fail();
            const away =
              ((to.y - from.y) * (corner.x - from.x) - (to.x - from.x) * (corner.y - from.y)) /
              pointDistance(from, to);
            expect(away).toBeCloseTo(2032, 4);
          }
        });
      }),
    );
  });

  it('has the area that an independent clipping library finds', () => {
    fc.assert(
      fc.property(
        fc.oneof(convexPolygon, starShapedPolygon),
        fc.integer({ min: 100, max: 3000 }),
        (any, distance) => {
          const polygon = onGrid(any);
          const grown = growPolygon(polygon, distance);
          const slack = polygonPerimeter(grown) * 1.5;
          expect(Math.abs(polygonArea(grown) - areaByClipper(polygon, distance))).toBeLessThan(slack);
        },
      ),
    );
  });

  it('covers the whole patch, by a second clipping library', () => {
    fc.assert(
      fc.property(fc.oneof(convexPolygon, starShapedPolygon), (polygon) => {
        const [outer, inner] = [growPolygon(polygon, 2032), polygon].map((ring): [number, number][] =>
          ring.map(({ x, y }) => [x, y]),
        );
        expect(polygonClipping.difference([inner ?? []], [outer ?? []])).toEqual([]);
      }),
    );
  });

  it('shrinks back to the finished patch', () => {
    fc.assert(
      fc.property(fc.oneof(convexPolygon, starShapedPolygon), (polygon) => {
        growPolygon(growPolygon(polygon, 2032), -2032).forEach((corner, index) => {
          expect(pointDistance(corner, polygon[index] ?? at(0, 0))).toBeLessThan(1e-3);
        });
      }),
    );
  });

  it('moves a corner in the middle of a straight side straight outward', () => {
    const grown = growPolygon([at(0, 0), at(1, 0), at(4, 0), at(4, 3), at(0, 3)], s);
    expect(grown[1]).toEqual(at(1, -s));
  });

  it('is the same patch if the seam is 0', () => {
    const triangle = [at(0, 0), at(3, 0), at(0, 3)];
    expect(growPolygon(triangle, 0)).toEqual(triangle);
  });
});

describe('growing is refused', () => {
  const triangle: Polygon = [at(0, 0), at(3, 0), at(0, 3)];

  it.each<[string, Polygon, number]>([
    ['a distance that is not a number', triangle, NaN],
    ['an infinite distance', triangle, Infinity],
    ['a polygon that goes back along its own line', [at(0, 0), at(3, 0), at(1, 0)], 1],
    ['a polygon that crosses itself', [at(0, 0), at(4, 4), at(4, 0), at(0, 4)], 1],
    ['shrinking a patch to nothing', triangle, -2],
    [
      'a notch narrower than two seams',
      [at(0, 0), at(9, 0), at(9, 9), at(5, 9), at(5, 5), at(4, 5), at(4, 9), at(0, 9)],
      1,
    ],
    [
      'a narrow opening of a wide pocket',
      [
        at(0, 0),
        at(9, 0),
        at(9, 9),
        at(5, 9),
        at(5, 8),
        at(7, 8),
        at(7, 2),
        at(2, 2),
        at(2, 8),
        at(4, 8),
        at(4, 9),
        at(0, 9),
      ],
      0.6,
    ],
  ])('%s', (_what, polygon, distance) => {
    expect(() => growPolygon(polygon, distance)).toThrow(RangeError);
  });

  it('not if the same notch is wide enough', () => {
    const notched = [at(0, 0), at(9, 0), at(9, 9), at(5, 9), at(5, 5), at(4, 5), at(4, 9), at(0, 9)];
    expect(polygonArea(growPolygon(notched, 0.25))).toBeCloseTo(9.5 * 9.5 - 0.5 * 4, 12);
    expect(
      polygonArea(
        growPolygon(
          notched.map((corner) => rotatePoint(corner, 1)),
          0.25,
        ),
      ),
    ).toBeCloseTo(88.25, 10);
  });
});

import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { type Point, pointMove } from '#core/geometry/point';
import {
  type Polygon,
  polygonArea,
  polygonContainsPoint,
  polygonIsSimple,
  polygonPerimeter,
  polygonSides,
  polygonCentroid,
  polygonSignedArea,
} from '#core/geometry/polygon';
import { convexPolygon, starShapedPolygon } from '#test/helpers/arbitraries';
import { rotatePoint } from '#test/helpers/rotate-point';

const at = (x: number, y: number): Point => ({ x, y });
const RECTANGLE: Polygon = [at(0, 0), at(4, 0), at(4, 3), at(0, 3)];
const ARROW: Polygon = [at(0, 0), at(4, -3), at(0, 3), at(-4, -3)];
const BOW: Polygon = [at(0, 0), at(4, 4), at(4, 0), at(0, 4)];
const TWICE_ROUND: Polygon = [0, 2, 4, 1, 3].map((corner) =>
  rotatePoint(at(1, 0), (corner * 2 * Math.PI) / 5),
);

describe('a polygon', () => {
  it('has an area that is positive if its corners run counterclockwise, and a perimeter', () => {
    expect(polygonSignedArea(RECTANGLE)).toBe(12);
    expect(polygonSignedArea([...RECTANGLE].reverse())).toBe(-12);
    expect(polygonArea([...RECTANGLE].reverse())).toBe(12);
    expect(polygonPerimeter(RECTANGLE)).toBe(14);
    expect(polygonArea(ARROW)).toBe(12);
  });

  it('is refused if it has fewer than three corners', () => {
    expect(() => polygonSides([])).toThrow(RangeError);
    expect(() => polygonArea([at(0, 0), at(1, 1)])).toThrow(RangeError);
  });

  it('keeps its area and perimeter when it is moved and turned', () => {
    fc.assert(
      fc.property(
        starShapedPolygon,
        fc.double({ min: -7, max: 7, noNaN: true }),
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        (polygon, radians, far) => {
          const moved = polygon.map((corner) => pointMove(rotatePoint(corner, radians), at(far, -far)));
          expect(polygonSignedArea(moved) / polygonSignedArea(polygon)).toBeCloseTo(1, 9);
          expect(polygonPerimeter(moved) / polygonPerimeter(polygon)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('contains the points inside it and on its edge and no others', () => {
    expect(polygonContainsPoint(RECTANGLE, at(2, 1))).toBe(true);
    expect(polygonContainsPoint(RECTANGLE, at(4, 1))).toBe(true);
    expect(polygonContainsPoint(RECTANGLE, at(0, 0))).toBe(true);
    expect(polygonContainsPoint(RECTANGLE, at(4.00001, 1))).toBe(false);
    expect(polygonContainsPoint(ARROW, at(0, -1))).toBe(false);
    expect(polygonContainsPoint(ARROW, at(0, 1))).toBe(true);
  });

  // polygon-clipping is the reference: a tiny square around the point is either inside the polygon or outside it.
  it('agrees with an independent clipping library about the points it contains', () => {
    fc.assert(
      fc.property(
        starShapedPolygon,
        fc.integer({ min: -400_000, max: 400_000 }),
        fc.integer({ min: -400_000, max: 400_000 }),
        (polygon, x, y) => {
          const dot = [at(x, y), at(x + 1, y), at(x + 1, y + 1), at(x, y + 1)];
          const shared = polygonClipping.intersection([ringOf(dot)], [ringOf(polygon)]);
          const areaShared = shared.reduce((sum, [ring]) => sum + Math.abs(ringArea(ring ?? [])), 0);
          fc.pre(areaShared < 1e-6 || areaShared > 1 - 1e-6);
          expect(polygonContainsPoint(polygon, at(x + 0.5, y + 0.5))).toBe(areaShared > 0.5);
        },
      ),
    );
  });

  it('balances in the middle of a rectangle, and at a third of the height of a triangle', () => {
    const middle = polygonCentroid(RECTANGLE)!;
    const xs = RECTANGLE.map(({ x }) => x);
    const ys = RECTANGLE.map(({ y }) => y);
    expect(middle.x).toBeCloseTo((Math.min(...xs) + Math.max(...xs)) / 2, 12);
    expect(middle.y).toBeCloseTo((Math.min(...ys) + Math.max(...ys)) / 2, 12);
    const triangle = [
      { x: 100, y: 100 },
      { x: 148, y: 100 },
      { x: 112, y: 136 },
    ];
    for (const corners of [triangle, [...triangle].reverse()]) {
      expect(polygonCentroid(corners)!.x).toBeCloseTo(120, 9);
      expect(polygonCentroid(corners)!.y).toBeCloseTo(112, 9);
    }
    expect(polygonCentroid(triangle.map(({ x }) => ({ x, y: 0 })))).toBeUndefined();
  });

  it('balances where its two parts do together, each by its area, however it is cut', () => {
    fc.assert(
      fc.property(convexPolygon, (polygon) => {
        fc.pre(polygon.length > 3 && polygonArea(polygon) > 1);
        const parts = [polygon.slice(0, 3), [polygon[0]!, ...polygon.slice(2)]];
        const whole = polygonCentroid(polygon)!;
        const sum = (axis: 'x' | 'y') =>
          parts.reduce((total, part) => total + (polygonCentroid(part)?.[axis] ?? 0) * polygonArea(part), 0);
        expect(Math.abs(sum('x') / polygonArea(polygon) - whole.x)).toBeLessThan(1e-6);
        expect(Math.abs(sum('y') / polygonArea(polygon) - whole.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('is simple if its sides meet only at their shared corners', () => {
    expect(polygonIsSimple(RECTANGLE)).toBe(true);
    expect(polygonIsSimple(ARROW)).toBe(true);
    expect(polygonIsSimple(BOW)).toBe(false);
    expect(polygonIsSimple(TWICE_ROUND)).toBe(false);
    expect(polygonIsSimple([at(0, 0), at(0, 0), at(4, 0), at(4, 3)])).toBe(false);
    expect(polygonIsSimple([at(0, 0), at(4, 0), at(2, 0), at(2, 3)])).toBe(false);
    expect(polygonIsSimple([at(0, 0), at(4, 0), at(4, 3), at(2, 0), at(0, 3)])).toBe(false);
    fc.assert(fc.property(fc.oneof(convexPolygon, starShapedPolygon), polygonIsSimple));
  });
});

function ringOf(polygon: Polygon): [number, number][] {
  return polygon.map(({ x, y }) => [x, y]);
}

function ringArea(ring: readonly (readonly [number, number])[]): number {
  const [originX, originY] = ring[0] ?? [0, 0];
  return ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
    return sum + ((x - originX) * (nextY - originY) - (nextX - originX) * (y - originY)) / 2;
  }, 0);
}

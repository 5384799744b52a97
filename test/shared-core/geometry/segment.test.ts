import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceOfCircle, clearanceOfPoint } from '#core/geometry/circle-in-polygon';
import { type Point, pointDistance, pointMidway, pointMove, pointRotate } from '#core/geometry/point';
import { lineCrossing, pointToSegmentDistance, type Segment, segmentsMeet } from '#core/geometry/segment';
import { convexPolygon } from '#test/helpers/arbitraries';

const at = (x: number, y: number): Point => ({ x, y });
const from = (x: number, y: number, toX: number, toY: number): Segment => ({
  from: at(x, y),
  to: at(toX, toY),
});
const anyPoint = fc.record({
  x: fc.integer({ min: -1000, max: 1000 }),
  y: fc.integer({ min: -1000, max: 1000 }),
});
const anySegment = fc.record({ from: anyPoint, to: anyPoint });

describe('points', () => {
  it('lie apart, midway, moved and turned', () => {
    expect(pointDistance(at(1, 1), at(4, 5))).toBe(5);
    expect(pointMidway(at(1, 1), at(4, 5))).toEqual(at(2.5, 3));
    expect(pointMove(at(1, 1), at(4, 5))).toEqual(at(5, 6));
    const turned = pointRotate(at(2, 0), Math.PI / 2);
    expect(pointDistance(turned, at(0, 2))).toBeLessThan(1e-15);
  });
});

describe('lines', () => {
  it('cross where both run, also beyond their ends', () => {
    expect(lineCrossing(from(0, 0, 4, 4), from(0, 4, 4, 0))).toEqual(at(2, 2));
    expect(lineCrossing(from(0, 0, 1, 0), from(5, 1, 5, 2))).toEqual(at(5, 0));
  });

  it('that are parallel, or have no length, do not cross', () => {
    expect(lineCrossing(from(0, 0, 4, 4), from(1, 0, 5, 4))).toBeUndefined();
    expect(lineCrossing(from(0, 0, 4, 4), from(8, 8, 6, 6))).toBeUndefined();
    expect(lineCrossing(from(0, 0, 0, 0), from(1, 0, 5, 4))).toBeUndefined();
    expect(lineCrossing(from(0, 0, 0.1 + 0.2, 1), from(5, 0, 5.3, 1))).toBeUndefined();
  });

  it('cross at a point that both segments see on their line', () => {
    fc.assert(
      fc.property(anySegment, anySegment, (first, second) => {
        const crossing = lineCrossing(first, second);
        fc.pre(crossing !== undefined && pointDistance(crossing, at(0, 0)) < 1e5);
        for (const { from: a, to: b } of [first, second]) {
          const away = (b.x - a.x) * (crossing.y - a.y) - (b.y - a.y) * (crossing.x - a.x);
          expect(Math.abs(away) / pointDistance(a, b)).toBeLessThan(1e-5);
        }
      }),
    );
  });
});

describe('the distance from a point to a segment', () => {
  it.each<[Point, number]>([
    [at(2, 3), 3],
    [at(-3, 4), 5],
    [at(7, -4), 5],
    [at(1, 0), 0],
  ])('from %j to (0,0)-(4,0) is %d', (point, distance) => {
    expect(pointToSegmentDistance(point, from(0, 0, 4, 0))).toBe(distance);
  });

  it('of no length is the distance to its point', () => {
    expect(pointToSegmentDistance(at(3, 4), from(0, 0, 0, 0))).toBe(5);
  });

  it('is the least of the distances to points along it', () => {
    fc.assert(
      fc.property(anyPoint, anySegment, (point, segment) => {
        const distance = pointToSegmentDistance(point, segment);
        const sampled = Array.from({ length: 1001 }, (_, step) => {
          const along = step / 1000;
          return pointDistance(point, {
            x: segment.from.x + along * (segment.to.x - segment.from.x),
            y: segment.from.y + along * (segment.to.y - segment.from.y),
          });
        });
        const least = Math.min(...sampled);
        expect(distance).toBeLessThanOrEqual(least + 1e-9);
        expect(distance).toBeGreaterThanOrEqual(least - pointDistance(segment.from, segment.to) / 1000);
      }),
    );
  });
});

describe('segments', () => {
  it.each<[string, Segment, Segment, boolean]>([
    ['that cross', from(0, 0, 4, 4), from(0, 4, 4, 0), true],
    ['that touch at an end', from(0, 0, 4, 0), from(4, 0, 5, 5), true],
    ['where one stands on the other', from(0, 0, 4, 0), from(2, 0, 2, 5), true],
    ['where the other stands on the one', from(2, 0, 2, 5), from(0, 0, 4, 0), true],
    ['where one ends on the other', from(2, 5, 2, 0), from(0, 0, 4, 0), true],
    ['where the other ends on the one', from(0, 0, 4, 0), from(2, 5, 2, 0), true],
    ['that overlap on one line', from(0, 0, 4, 0), from(3, 0, 9, 0), true],
    ['that lie apart on one line', from(0, 0, 4, 0), from(5, 0, 9, 0), false],
    ['that would cross if longer', from(0, 0, 1, 1), from(0, 4, 4, 0), false],
    ['that are parallel', from(0, 0, 4, 0), from(0, 1, 4, 1), false],
  ])('%s: meet is %s', (_what, first, second, doMeet) => {
    expect(segmentsMeet(first, second)).toBe(doMeet);
    expect(segmentsMeet(second, first)).toBe(doMeet);
  });
});

describe('a circle in a patch', () => {
  const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];

  it('leaves the distance to the nearest edge', () => {
    expect(clearanceOfCircle(square, at(5, 5), 3)).toBe(2);
    expect(clearanceOfCircle(square, at(3, 5), 3)).toBe(0);
    expect(clearanceOfCircle(square, at(2, 5), 3)).toBe(-1);
    expect(clearanceOfPoint(square, at(12, 5))).toBe(-2);
    expect(clearanceOfPoint(square, at(10, 5))).toBe(0);
  });

  it('with clearance has every point of its rim inside', () => {
    fc.assert(
      fc.property(convexPolygon, fc.integer({ min: 1, max: 30_000 }), (polygon, radius) => {
        const clearance = clearanceOfCircle(polygon, at(0, 0), radius);
        const rim = Array.from({ length: 360 }, (_, degree) =>
          pointRotate(at(radius, 0), (degree * Math.PI) / 180),
        );
        const isAllInside = rim.every((point) => clearanceOfPoint(polygon, point) >= 0);
        if (clearance >= 0) expect(isAllInside).toBe(true);
        if (isAllInside) expect(clearance).toBeGreaterThan(-radius * 2e-4);
      }),
    );
  });
});

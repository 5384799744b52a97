import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceOfPoint } from '#core/geometry/clearance-of-point';
import { type Point, pointDistance, pointMidway, pointMove } from '#core/geometry/point';
import {
  lineCrossing,
  nearestToLines,
  pointToSegmentDistance,
  type Segment,
  segmentsMeet,
} from '#core/geometry/segment';
import { convexPolygon } from '#test/helpers/arbitraries';
import { rotatePoint } from '#test/helpers/rotate-point';

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
  it('have a distance and a midpoint and can be moved', () => {
    expect(pointDistance(at(1, 1), at(4, 5))).toBe(5);
    expect(pointMidway(at(1, 1), at(4, 5))).toEqual(at(2.5, 3));
    expect(pointMove(at(1, 1), at(4, 5))).toEqual(at(5, 6));
  });
});

describe('lines', () => {
  it('cross where both go, also beyond their ends', () => {
    expect(lineCrossing(from(0, 0, 4, 4), from(0, 4, 4, 0))).toEqual(at(2, 2));
    expect(lineCrossing(from(0, 0, 1, 0), from(5, 1, 5, 2))).toEqual(at(5, 0));
  });

  it('have a nearest point: where two cross, and closer to three than any point beside it', () => {
    expect(nearestToLines([from(0, 0, 4, 4), from(0, 4, 4, 0)])).toEqual(at(2, 2));
    expect(nearestToLines([from(0, 0, 4, 4), from(1, 0, 5, 4)])).toBeUndefined();
    expect(nearestToLines([from(0, 0, 0, 0), from(1, 0, 5, 4)])).toBeUndefined();
    const away = ({ x, y }: Point, line: Segment) => {
      const [dx, dy] = [line.to.x - line.from.x, line.to.y - line.from.y];
      return ((x - line.from.x) * dy - (y - line.from.y) * dx) / Math.hypot(dx, dy);
    };
    fc.assert(
      fc.property(anySegment, anySegment, anySegment, (...lines) => {
        const nearest = nearestToLines(lines);
        fc.pre(nearest !== undefined && Math.hypot(nearest.x, nearest.y) < 5_000);
        const cost = (point: Point) => lines.reduce((sum, line) => sum + away(point, line) ** 2, 0);
        for (const [x, y] of [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
        ] as const)
          expect(cost(pointMove(nearest, at(x, y)))).toBeGreaterThanOrEqual(cost(nearest) - 1e-6);
      }),
    );
  });

  it('do not cross if they are parallel or have no length', () => {
    expect(lineCrossing(from(0, 0, 4, 4), from(1, 0, 5, 4))).toBeUndefined();
    expect(lineCrossing(from(0, 0, 4, 4), from(8, 8, 6, 6))).toBeUndefined();
    expect(lineCrossing(from(0, 0, 0, 0), from(1, 0, 5, 4))).toBeUndefined();
    expect(lineCrossing(from(0, 0, 0.1 + 0.2, 1), from(5, 0, 5.3, 1))).toBeUndefined();
  });

  it('cross at a point that is on both of them', () => {
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

  it('is the distance to the one point of a segment without length', () => {
    expect(pointToSegmentDistance(at(3, 4), from(0, 0, 0, 0))).toBe(5);
  });

  it('is the shortest distance to any point along the segment', () => {
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
    ['that share an end', from(0, 0, 4, 0), from(4, 0, 5, 5), true],
    ['where the second starts on the first', from(0, 0, 4, 0), from(2, 0, 2, 5), true],
    ['where the first starts on the second', from(2, 0, 2, 5), from(0, 0, 4, 0), true],
    ['where the first ends on the second', from(2, 5, 2, 0), from(0, 0, 4, 0), true],
    ['where the second ends on the first', from(0, 0, 4, 0), from(2, 5, 2, 0), true],
    ['that overlap on one line', from(0, 0, 4, 0), from(3, 0, 9, 0), true],
    ['that are apart on one line', from(0, 0, 4, 0), from(5, 0, 9, 0), false],
    ['that would cross if they were longer', from(0, 0, 1, 1), from(0, 4, 4, 0), false],
    ['that are parallel', from(0, 0, 4, 0), from(0, 1, 4, 1), false],
  ])('%s: meet is %s', (_what, first, second, doMeet) => {
    expect(segmentsMeet(first, second)).toBe(doMeet);
    expect(segmentsMeet(second, first)).toBe(doMeet);
  });
});

describe('the clearance of a point in a patch', () => {
  const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];

  it('is the distance to the nearest edge, negative outside', () => {
    expect(clearanceOfPoint(square, at(5, 5))).toBe(5);
    expect(clearanceOfPoint(square, at(3, 5))).toBe(3);
    expect(clearanceOfPoint(square, at(12, 5))).toBe(-2);
    expect(clearanceOfPoint(square, at(10, 5))).toBe(0);
  });

  it('is the radius of the largest circle around the point that stays inside', () => {
    fc.assert(
      fc.property(convexPolygon, fc.integer({ min: 1, max: 30_000 }), (polygon, radius) => {
        const clearance = clearanceOfPoint(polygon, at(0, 0));
        const rim = Array.from({ length: 360 }, (_, degree) =>
          rotatePoint(at(radius, 0), (degree * Math.PI) / 180),
        );
        const isAllInside = rim.every((point) => clearanceOfPoint(polygon, point) >= 0);
        if (clearance >= radius) expect(isAllInside).toBe(true);
        // 360 points miss the nearest edge by at most half a degree of arc, which is under 2e-4 of the radius.
        if (isAllInside) expect(clearance).toBeGreaterThan(radius * (1 - 2e-4));
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleNearest } from '#core/calculators/center/center-find/circle-fit';
import { goesRoundOnce } from '#core/calculators/center/center-find/found';
import {
  atOrigin,
  fitNetwork,
  type FromPins,
  type Pair,
  placeFromPins,
  pointsOf,
  unknownsOf,
} from '#core/calculators/center/center-find/network';
import { type Point, pointDistance } from '#core/geometry/point';

const coordinate = fc.double({ min: -40, max: 40, noNaN: true });
const anyPoint = fc.record({ x: coordinate, y: coordinate });
const PINS: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 40, y: 0 },
  { x: 15, y: 35 },
];
const fromPins = (point: Point): FromPins => {
  const [a, b, c] = PINS.map((pin) => pointDistance(pin, point));
  return [a!, b!, c!];
};
const BASE: FromPins = [
  pointDistance(PINS[0]!, PINS[1]!),
  pointDistance(PINS[1]!, PINS[2]!),
  pointDistance(PINS[2]!, PINS[0]!),
];

describe('points by their distances from three pins', () => {
  it('are where they were measured, on either side of the line of A and B', () => {
    fc.assert(
      fc.property(fc.array(anyPoint, { minLength: 1, maxLength: 9 }), (points) => {
        const placed = placeFromPins(BASE, points.map(fromPins))!;
        [...PINS, ...points].forEach((point, index) => {
          expect(pointDistance(placed[index]!, point)).toBeLessThan(1e-5);
        });
      }),
    );
  });

  it('do not exist if the pins cannot make a triangle', () => {
    expect(placeFromPins([10, 4, 5], [])).toBeNull();
    expect(placeFromPins([10, 5, 5], [])).toBeNull();
  });
});

/** Moves one coordinate at a time by smaller and smaller steps, as long as the sum of squares falls: slow but simple. */
function patternSearch(start: readonly number[], cost: (flat: readonly number[]) => number) {
  let best = [...start];
  for (let step = 0.5; step > 1e-8; step /= 2) {
    for (let improved = true; improved;) {
      improved = false;
      for (const [index, sign] of best.flatMap((_, at) => [[at, 1] as const, [at, -1] as const])) {
        const next = best.map((value, at) => (at === index ? value + sign * step : value));
        if (cost(next) < cost(best) - 1e-18) [best, improved] = [next, true];
      }
    }
  }
  return best;
}

const PAIRS: readonly Pair[] = [
  [0, 1],
  [1, 2],
  [2, 0],
  [3, 0],
  [3, 1],
  [3, 2],
  [4, 0],
  [4, 1],
  [4, 2],
];
const anyFive = fc
  .record({
    off: fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 10, maxLength: 10 }),
    noise: fc.array(fc.double({ min: -0.25, max: 0.25, noNaN: true }), { minLength: 9, maxLength: 9 }),
  })
  .map(({ off, noise }) => {
    const base = [...PINS, { x: 42, y: 30 }, { x: -5, y: 20 }];
    const points = base.map(({ x, y }, at) => ({ x: x + off[2 * at]!, y: y + off[2 * at + 1]! }));
    const measured = PAIRS.map(([from, to], at) => pointDistance(points[from]!, points[to]!) + noise[at]!);
    return { points, measured };
  });

describe('the points that fit measured distances', () => {
  const costOf = (unknowns: readonly number[], measured: readonly number[]) => {
    const points = pointsOf(unknowns);
    return PAIRS.reduce(
      (sum, [from, to], at) => sum + (pointDistance(points[from]!, points[to]!) - measured[at]!) ** 2,
      0,
    );
  };

  it('change them as little as an independent search does', () => {
    fc.assert(
      fc.property(anyFive, ({ points, measured }) => {
        const start = atOrigin(points);
        const found = fitNetwork({ points: start, pairs: PAIRS }, measured)!;
        const searched = patternSearch(unknownsOf(start), (flat) => costOf(flat, measured));
        expect(costOf(found, measured)).toBeLessThanOrEqual(costOf(searched, measured) + 1e-9);
      }),
      { numRuns: 15 },
    );
  });

  it('balance the changes at every point, as at a minimum of least squares', () => {
    fc.assert(
      fc.property(anyFive, ({ points, measured }) => {
        const fitted = pointsOf(fitNetwork({ points: atOrigin(points), pairs: PAIRS }, measured)!);
        for (const axis of ['x', 'y'] as const) {
          const pulls = fitted.map(() => 0);
          PAIRS.forEach(([from, to], at) => {
            const length = pointDistance(fitted[from]!, fitted[to]!);
            const pull = ((length - measured[at]!) * (fitted[to]![axis] - fitted[from]![axis])) / length;
            pulls[from]! -= pull;
            pulls[to]! += pull;
          });
          for (const pull of pulls) expect(Math.abs(pull)).toBeLessThan(1e-7);
        }
      }),
    );
  });

  it('do not exist where a length would have to change by a tenth of the longest or more', () => {
    const square: readonly Pair[] = [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 0],
      [0, 2],
      [1, 3],
    ];
    const corners = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ];
    const fit = (bottom: number) =>
      fitNetwork({ points: corners, pairs: square }, [10, 10, bottom, 10, 10 * Math.SQRT2, 10 * Math.SQRT2]);
    const bottoms = Array.from({ length: 180 }, (_, at) => 10 - at / 20);
    const fits = bottoms.map(fit);
    const firstRefused = fits.indexOf(null);
    expect(firstRefused).toBeGreaterThan(0);
    expect(fits.slice(firstRefused).every((one) => one === null)).toBe(true);
  });

  it('keep their distances when they are turned to start at (0, 0) along the x axis', () => {
    fc.assert(
      fc.property(fc.array(anyPoint, { minLength: 3, maxLength: 6 }), (points) => {
        fc.pre(pointDistance(points[0]!, points[1]!) > 0.1);
        const turned = atOrigin(points);
        expect(pointDistance(turned[0]!, { x: 0, y: 0 })).toBe(0);
        expect(turned[1]!.x).toBeGreaterThan(0);
        expect(Math.abs(turned[1]!.y)).toBeLessThan(1e-9);
        points.forEach((one, at) => {
          expect(pointDistance(turned[at]!, turned[2]!)).toBeCloseTo(pointDistance(one, points[2]!), 6);
        });
      }),
    );
  });
});

describe('the circle nearest to points', () => {
  it('through (1, 1), (2, 4) and (5, 3) has its center at (3, 2) and a radius of 2.2361', () => {
    // Published: MSE, three points and their circle.
    const circle = circleNearest([
      { x: 1, y: 1 },
      { x: 2, y: 4 },
      { x: 5, y: 3 },
    ])!;
    expect(circle.center.x).toBeCloseTo(3, 9);
    expect(circle.center.y).toBeCloseTo(2, 9);
    expect(circle.radius).toBeCloseTo(Math.sqrt(5), 9);
  });

  it('is nearer than any that a search finds', () => {
    const points = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(points, coordinate, coordinate, (off, x, y) => {
        const around = off.map((away, at) => {
          const angle = (2 * Math.PI * at) / off.length;
          return { x: x + (24 + away) * Math.cos(angle), y: y + (24 + away) * Math.sin(angle) };
        });
        const cost = ([cx = 0, cy = 0, radius = 0]: readonly number[]) =>
          around.reduce((sum, one) => sum + (pointDistance(one, { x: cx, y: cy }) - radius) ** 2, 0);
        const { center, radius } = circleNearest(around)!;
        const searched = patternSearch([x, y, 24], cost);
        expect(cost([center.x, center.y, radius])).toBeLessThanOrEqual(cost(searched) + 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  it('does not exist for points in a line', () => {
    const line = [0, 1, 2, 3].map((at) => ({ x: at, y: 2 * at }));
    expect(circleNearest(line)).toBeNull();
  });
});

describe('corners that go round once', () => {
  const corners = (...points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y }));

  it('turn clockwise everywhere, and not where one is pushed in, flat, crossed or on the other side', () => {
    expect(goesRoundOnce(corners([0, 0], [10, 0], [9, 10], [1, 9]))).toBe(true);
    expect(goesRoundOnce(corners([0, 0], [10, 0], [4, 3], [0, 10]))).toBe(false);
    expect(goesRoundOnce(corners([0, 0], [10, 0], [5, 5], [0, 10]))).toBe(false);
    expect(goesRoundOnce(corners([0, 0], [10, 0], [1, 9], [9, 10]))).toBe(false);
    expect(goesRoundOnce(corners([0, 0], [1, 9], [9, 10], [10, 0]))).toBe(false);
  });
});

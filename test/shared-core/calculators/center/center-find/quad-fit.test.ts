import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitQuad,
  type Quad,
  type QuadFit,
  quadMap,
  type SixLengths,
} from '#core/calculators/center/center-find/quad-fit';
import { type Point, pointDistance } from '#core/geometry/point';

function lengthsOf([a, b, c, d]: Quad): SixLengths {
  return {
    top: pointDistance(a, b),
    right: pointDistance(b, c),
    bottom: pointDistance(c, d),
    left: pointDistance(d, a),
    downToRight: pointDistance(a, c),
    upToRight: pointDistance(b, d),
  };
}

/** In the order of the residuals. */
const listOf = ({ top, right, bottom, left, downToRight, upToRight }: SixLengths) => [
  top,
  right,
  bottom,
  left,
  downToRight,
  upToRight,
];

const corners = (...points: readonly (readonly [number, number])[]): Quad =>
  points.map(([x, y]): Point => ({ x, y })) as unknown as Quad;

const square: SixLengths = {
  top: 10,
  right: 10,
  bottom: 10,
  left: 10,
  downToRight: 14.142,
  upToRight: 14.142,
};

/** Twice the area on the left of the way from one corner over the next to the one after: below zero where it turns left, y down. */
const turns = (quad: Quad) =>
  quad.map((corner, at) => {
    const [next, after] = [quad[(at + 1) % 4]!, quad[(at + 2) % 4]!];
    return (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x);
  });

describe('the corners of a fitted shape', () => {
  it('start at (0, 0) with the top side along the x axis and the rest below it', () => {
    const leaning = corners([3, 4], [31, 25], [20, 50], [-8, 30]);
    const fit = fitQuad(lengthsOf(leaning))!;
    const [a, b, c, d] = fit.corners;
    expect([a.x, a.y, b.y]).toEqual([0, 0, 0]);
    expect(b.x).toBeCloseTo(35, 9);
    expect(Math.min(c.y, d.y)).toBeGreaterThan(0);
    expect(turns(fit.corners).every((turn) => turn > 0)).toBe(true);
  });

  it('are changed one by one by quadMap', () => {
    const moved = quadMap(corners([0, 0], [1, 0], [1, 2], [0, 3]), ({ x, y }) => ({ x: x + 1, y: 2 * y }));
    expect(moved).toEqual(corners([1, 0], [2, 0], [2, 4], [1, 6]));
  });
});

describe('lengths that no shape has', () => {
  it('are those of a shape that is not convex or crosses itself', () => {
    const pushedIn = corners([0, 0], [10, 0], [4, 3], [0, 10]);
    const crossed = corners([0, 0], [10, 0], [1, 9], [9, 10]);
    expect(fitQuad(lengthsOf(pushedIn))).toBeNull();
    expect(fitQuad(lengthsOf(crossed))).toBeNull();
    expect(fitQuad(lengthsOf(corners([0, 0], [10, 0], [9, 10], [1, 9])))).not.toBeNull();
  });

  it.each<[string, Partial<SixLengths>]>([
    ['a corner flat on the top', { top: 10, right: 5, downToRight: 15 }],
    ['the other corner flat on the top', { top: 10, left: 5, upToRight: 15 }],
    ['a side longer than the other three', { right: 40 }],
    ['a diagonal shorter than the sides differ', { downToRight: 1, right: 25 }],
    ['both diagonals far too long', { downToRight: 25, upToRight: 25 }],
  ])('are those with %s', (_what, change) => {
    expect(fitQuad({ ...square, ...change })).toBeNull();
  });

  it('are those that would have to change by a tenth of the longest or more, but not by less', () => {
    const bottoms = Array.from({ length: 180 }, (_, at) => 10 - at / 20);
    const fits = bottoms.map((bottom) => fitQuad({ ...square, bottom }));
    const firstRefused = fits.indexOf(null);
    expect(firstRefused).toBeGreaterThan(0);
    expect(fits.slice(firstRefused).every((fit) => fit === null)).toBe(true);
    const largest = (fit: QuadFit | null) => Math.max(...fit!.residuals.map(Math.abs)) / 14.142;
    expect(largest(fits[firstRefused - 1]!)).toBeLessThan(0.1);
    expect(largest(fits[firstRefused - 1]!)).toBeGreaterThan(0.098);
  });
});

describe('the change of each length', () => {
  it('is fitted minus measured, in the order and the unit of the input', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -0.2, max: 0.2, noNaN: true }), { minLength: 6, maxLength: 6 }),
        fc.constantFrom(1, 25.4, 8_128),
        (off, unit) => {
          const [top, right, bottom, left, downToRight, upToRight] = [30, 40, 30, 40, 50, 50].map(
            (length, at) => unit * (length + off[at]!),
          ) as [number, number, number, number, number, number];
          const measured = { top, right, bottom, left, downToRight, upToRight };
          const { corners: found, residuals } = fitQuad(measured)!;
          listOf(lengthsOf(found)).forEach((length, at) => {
            expect(length - listOf(measured)[at]!).toBeCloseTo(residuals[at]!, 6);
          });
        },
      ),
    );
  });

  it('is the same for equal lengths: two diagonals half an inch too long shrink, and all four sides of a square grow', () => {
    const { residuals } = fitQuad({ ...square, downToRight: 14.642, upToRight: 14.642 })!;
    const [top, right, bottom, left, downToRight, upToRight] = residuals as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (const side of [right, bottom, left]) expect(side).toBeCloseTo(top, 9);
    expect(upToRight).toBeCloseTo(downToRight, 9);
    // Of a square sides give 4·x² and diagonals 2·y², with √2·x − y = what is over: x = over · √2/4, y = −over/2 (derived).
    const over = 14.642 - 10 * Math.SQRT2;
    expect(top).toBeCloseTo((over * Math.SQRT2) / 4, 6);
    expect(downToRight).toBeCloseTo(-over / 2, 6);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  closureOf,
  type Fitted,
  soleChangesOf,
  unevenIn,
} from '#core/calculators/center/center-find/closure';
import { uncertaintyOf, type LengthModel } from '#core/calculators/center/center-find/fit-lengths';
import {
  fitNetwork,
  networkModel,
  type Pair,
  placeFromPins,
} from '#core/calculators/center/center-find/network';

const PAIRS: readonly Pair[] = [
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
  [0, 2],
  [1, 3],
];
/** Top, right, bottom, left and the two diagonals. */
type Six = readonly [number, number, number, number, number, number];
const rectangle = (width: number, height: number): Six => {
  const diagonal = Math.hypot(width, height);
  return [width, height, width, height, diagonal, diagonal];
};
const wrongBy = (lengths: Six, index: number, error: number) =>
  lengths.map((length, at) => (at === index ? length + error : length)) as unknown as Six;
const fitted = (measured: Six): Fitted => {
  const [top, right, bottom, left, downToRight, upToRight] = measured;
  const points = placeFromPins([top, right, downToRight], [[left, upToRight, bottom]])!;
  return { model: networkModel(PAIRS), measured, unknowns: fitNetwork({ points, pairs: PAIRS }, measured)! };
};
const uneven = unevenIn([
  [0, 2],
  [1, 3],
  [4, 5],
]);

/** The determinant of Cayley and Menger of the six distances: 0 exactly if four points in a plane have them. */
function cayleyMenger(lengths: Six): number {
  const [ab, bc, cd, da, ac, bd] = lengths.map((length) => length * length) as unknown as Six;
  return determinant([
    [0, 1, 1, 1, 1],
    [1, 0, ab, ac, da],
    [1, ab, 0, bc, bd],
    [1, ac, bc, 0, cd],
    [1, da, bd, cd, 0],
  ]);
}
function determinant(matrix: readonly (readonly number[])[]): number {
  const [first = [], ...rest] = matrix;
  if (rest.length === 0) return first[0]!;
  return first.reduce(
    (sum, value, at) =>
      sum +
      (at % 2 === 0 ? 1 : -1) *
        value *
        determinant(rest.map((row) => row.filter((_, index) => index !== at))),
    0,
  );
}

const anyRectangle = fc.record({
  width: fc.integer({ min: 24, max: 90 }),
  height: fc.integer({ min: 24, max: 90 }),
});
const anyPlace = fc.nat(5);
const anyError = fc.double({ min: -1, max: 1, noNaN: true });

describe('the closure error', () => {
  it('of a misread length is seen from that length as the whole error', () => {
    fc.assert(
      fc.property(anyRectangle, anyPlace, anyError, ({ width, height }, at, error) => {
        const changes = soleChangesOf(fitted(wrongBy(rectangle(width, height), at, error)), 1e-6);
        expect(changes.find(({ index }) => index === at)!.changedBy).toBeCloseTo(-error, 6);
      }),
    );
  });

  it('makes the six lengths flat by the determinant of Cayley and Menger, whichever length changes', () => {
    fc.assert(
      fc.property(anyRectangle, anyPlace, anyError, ({ width, height }, at, error) => {
        const measured = wrongBy(rectangle(width, height), at, error);
        for (const { index, fits, leftOver } of soleChangesOf(fitted(measured), 1e-6)) {
          const closed = measured.map((length, place) => (place === index ? fits : length)) as unknown as Six;
          expect(Math.abs(cayleyMenger(closed)) / Math.max(...measured) ** 6).toBeLessThan(1e-9);
          expect(leftOver).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('within the accuracy is the same from the slopes at the fit, to a thousandth of an inch', () => {
    const small = fc.double({ min: -1 / 8, max: 1 / 8, noNaN: true });
    fc.assert(
      fc.property(anyRectangle, anyPlace, small, ({ width, height }, at, error) => {
        const fit = fitted(wrongBy(rectangle(width, height), at, error));
        const [near, exact] = [soleChangesOf(fit, 1 / 8), soleChangesOf(fit, 1e-9)];
        near.forEach((change, place) => expect(change.fits).toBeCloseTo(exact[place]!.fits, 2.7));
      }),
    );
  });

  // By Ptolemy, for an isosceles trapezoid: 60 · 60 = 36 · 36 + 48 · 48, so a top of 48 1/2 is 1/2 too long (derived).
  it('of a top of 48 1/2 where 48 belongs is not spread over six lengths, and the top is the suspect', () => {
    const closure = closureOf(fitted(wrongBy(rectangle(48, 36), 0, 0.5)), 1 / 8, uneven);
    expect(closure.soleChanges[0]!.fits).toBeCloseTo(48, 9);
    expect(closure.error!).toBeGreaterThan(0.35);
    expect(closure.limit).toBe(1 / 8);
    expect(closure.suspects.map(({ index }) => index)).toEqual([0]);
  });

  it('of a true rectangle is nothing, and nothing is suspect', () => {
    fc.assert(
      fc.property(anyRectangle, ({ width, height }) => {
        const closure = closureOf(fitted(rectangle(width, height)), 1 / 8, uneven);
        expect(closure.error!).toBeLessThan(1e-9);
        expect(closure.suspects).toEqual([]);
      }),
    );
  });

  it('may be larger where more lengths check one another: by the root of how many more there are than needed', () => {
    const model: LengthModel = {
      lengthsAt: ([across = 0]) => [across, across, across, across, across],
      slopesAt: () => Array.from({ length: 5 }, () => [{ unknown: 0, slope: 1 }]),
    };
    const measured = [48, 48, 49, 48, 48];
    const closure = closureOf({ model, measured, unknowns: [48.2] }, 1 / 8);
    expect(closure.limit).toBe(1 / 4);
    expect(closure.suspects.map(({ index, fits }) => [index, Math.round(1e6 * fits) / 1e6])).toEqual([
      [2, 48],
    ]);
    // The mean of five readings, each off by a, is off by a ÷ √5 (derived).
    expect(uncertaintyOf(model, [48], { unknown: 0, accuracy: 1 / 8 })).toBeCloseTo(1 / 8 / Math.sqrt(5), 12);
  });

  it('is not known where no other length checks one', () => {
    const model: LengthModel = {
      lengthsAt: ([one = 0, other = 0]) => [one, other],
      slopesAt: () => [[{ unknown: 0, slope: 1 }], [{ unknown: 1, slope: 1 }]],
    };
    expect(closureOf({ model, measured: [3, 4], unknowns: [3, 4] }, 1 / 8)).toMatchObject({
      error: null,
      soleChanges: [],
      suspects: [],
    });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  closureOf,
  LENGTH_NAMES,
  type LengthName,
  suspectsOf,
} from '#core/calculators/center/center-find/closure';
import { fitQuad, type SixLengths } from '#core/calculators/center/center-find/quad-fit';

const rectangle = (width: number, height: number): SixLengths => ({
  top: width,
  right: height,
  bottom: width,
  left: height,
  downToRight: Math.hypot(width, height),
  upToRight: Math.hypot(width, height),
});
const wrongBy = (lengths: SixLengths, name: LengthName, error: number): SixLengths => ({
  ...lengths,
  [name]: lengths[name] + error,
});

/** The determinant of Cayley and Menger of the six distances: 0 exactly if four points in a plane have them. */
function cayleyMenger({ top, right, bottom, left, downToRight, upToRight }: SixLengths): number {
  const square = (length: number) => length * length;
  const [ab, bc, cd, da, ac, bd] = [top, right, bottom, left, downToRight, upToRight].map(square) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
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
const anyName = fc.constantFrom(...LENGTH_NAMES);

describe('the closure error', () => {
  it('of a misread length is seen from that length as the whole error', () => {
    fc.assert(
      fc.property(anyRectangle, anyName, fc.double({ min: -1, max: 1, noNaN: true }), (size, name, error) => {
        const { soleChanges } = closureOf(wrongBy(rectangle(size.width, size.height), name, error));
        const own = soleChanges.find((change) => change.name === name)!;
        expect(own.changedBy).toBeCloseTo(-error, 8);
      }),
    );
  });

  it('makes the six lengths flat by the determinant of Cayley and Menger, whichever length changes', () => {
    fc.assert(
      fc.property(anyRectangle, anyName, fc.double({ min: -1, max: 1, noNaN: true }), (size, name, error) => {
        const measured = wrongBy(rectangle(size.width, size.height), name, error);
        for (const change of closureOf(measured).soleChanges) {
          const closed = { ...measured, [change.name]: change.fits };
          const scale = Math.max(...LENGTH_NAMES.map((one) => measured[one])) ** 6;
          expect(Math.abs(cayleyMenger(closed)) / scale).toBeLessThan(1e-12);
          expect(Math.max(...fitQuad(closed)!.residuals.map(Math.abs))).toBeLessThan(1e-6);
        }
      }),
    );
  });

  // By Ptolemy, for an isosceles trapezoid: 60 · 60 = 36 · 36 + 48 · 48, so a top of 48 1/2 is 1/2 too long (derived).
  it('of a top of 48 1/2 where 48 belongs is not spread over six lengths, and the top is the suspect', () => {
    const closure = closureOf(wrongBy(rectangle(48, 36), 'top', 0.5));
    const top = closure.soleChanges.find(({ name }) => name === 'top')!;
    expect(top.fits).toBeCloseTo(48, 9);
    expect(closure.error!).toBeGreaterThan(0.35);
    expect(suspectsOf(closure, 1 / 8).map(({ name }) => name)).toEqual(['top']);
  });

  it('of a true rectangle is nothing', () => {
    fc.assert(
      fc.property(anyRectangle, ({ width, height }) => {
        expect(closureOf(rectangle(width, height)).error!).toBeLessThan(1e-9);
      }),
    );
  });
});

/** Repeatable numbers from 0 to 1. */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

describe('one length wrong by 1/2 in or more on a top 48 in wide, the others right to 1/16 in', () => {
  const ACCURACY = 1 / 8;
  const shareNoticed = (heights: readonly [number, number]) => {
    const random = numbersFrom(48);
    const runs = 4_000;
    let noticed = 0;
    for (let run = 0; run < runs; run += 1) {
      const height = heights[0] + random() * (heights[1] - heights[0]);
      const name = LENGTH_NAMES[Math.floor(random() * LENGTH_NAMES.length)] ?? 'top';
      const error = (random() < 0.5 ? -1 : 1) * (0.5 + random() / 2);
      const right = rectangle(48, height);
      const read = { ...right };
      for (const one of LENGTH_NAMES) read[one] = right[one] + (random() - 0.5) / 8;
      const { error: closure } = closureOf(wrongBy(read, name, error));
      if (closure === null || closure > ACCURACY) noticed += 1;
    }
    return noticed / runs;
  };

  it('is noticed in at least 95 of 100 cases if the piece is 24 in high or more', () => {
    expect(shareNoticed([24, 72])).toBeGreaterThan(0.95);
  });

  it('is missed in about 15 of 100 cases on a piece only 6 to 12 in high, where a short side hardly moves the diagonals', () => {
    const share = shareNoticed([6, 12]);
    expect(share).toBeLessThan(0.88);
    expect(share).toBeGreaterThan(0.82);
  });
});

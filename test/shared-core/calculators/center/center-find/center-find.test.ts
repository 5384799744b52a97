import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centerFind } from '#core/calculators/center/center-find/center-find';
import type { CenterFindInput } from '#core/calculators/center/center-find/input';
import { fitQuad, type SixLengths } from '#core/calculators/center/center-find/quad-fit';
import { formatExactQuantity, formatQuantity } from '#core/calculators/format-quantity';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { type Point, pointDistance } from '#core/geometry/point';
import { lengthFromExact, lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

type Four = readonly [Point, Point, Point, Point];

const lengthsOf = ([a, b, c, d]: Four): SixLengths => ({
  top: pointDistance(a, b),
  right: pointDistance(b, c),
  bottom: pointDistance(c, d),
  left: pointDistance(d, a),
  downToRight: pointDistance(a, c),
  upToRight: pointDistance(b, d),
});
const listOf = (lengths: SixLengths) => [
  lengths.top,
  lengths.right,
  lengths.bottom,
  lengths.left,
  lengths.downToRight,
  lengths.upToRight,
];
const sumOfSquares = (corners: Four, measured: SixLengths) => {
  const fitted = listOf(lengthsOf(corners));
  return listOf(measured).reduce((sum, length, index) => sum + ((fitted[index] ?? 0) - length) ** 2, 0);
};

/** Moves one coordinate of one corner at a time by smaller and smaller steps, as long as the sum of squares falls: slow but simple. */
function patternSearch(from: Four, measured: SixLengths): Four {
  let best = from.flatMap(({ x, y }) => [x, y]);
  const asFour = (flat: readonly number[]) =>
    [0, 2, 4, 6].map((at) => ({ x: flat[at]!, y: flat[at + 1]! })) as unknown as Four;
  const cost = (flat: readonly number[]) => sumOfSquares(asFour(flat), measured);
  for (let step = 0.5; step > 1e-9; step /= 2) {
    for (let improved = true; improved;) {
      improved = false;
      for (const [index, sign] of best.flatMap((_, at) => [[at, 1] as const, [at, -1] as const])) {
        const moved = best.map((value, at) => (at === index ? value + sign * step : value));
        if (cost(moved) < cost(best) - 1e-18) [best, improved] = [moved, true];
      }
    }
  }
  return asFour(best);
}

/** Nearly a rectangle, each corner off by up to an inch and a half; in inches, top left corner first, y down. */
const anyShape: fc.Arbitrary<Four> = fc
  .record({
    width: fc.integer({ min: 20, max: 90 }),
    height: fc.integer({ min: 20, max: 90 }),
    off: fc.array(fc.integer({ min: -12, max: 12 }), { minLength: 8, maxLength: 8 }),
  })
  .map(({ width, height, off }) => {
    const at = (x: number, y: number, index: number) => ({
      x: x + off[2 * index]! / 8,
      y: y + off[2 * index + 1]! / 8,
    });
    return [at(0, 0, 0), at(width, 0, 1), at(width, height, 2), at(0, height, 3)];
  });
const anyNoise = fc.array(fc.double({ min: -0.25, max: 0.25, noNaN: true }), { minLength: 6, maxLength: 6 });
const withNoise = (lengths: SixLengths, noise: readonly number[]): SixLengths => ({
  top: lengths.top + noise[0]!,
  right: lengths.right + noise[1]!,
  bottom: lengths.bottom + noise[2]!,
  left: lengths.left + noise[3]!,
  downToRight: lengths.downToRight + noise[4]!,
  upToRight: lengths.upToRight + noise[5]!,
});

describe('the shape of six lengths', () => {
  it('is found exactly if they agree', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const measured = lengthsOf(shape);
        const fit = fitQuad(measured)!;
        expect(Math.max(...fit.residuals.map(Math.abs))).toBeLessThan(1e-9);
        expect(
          listOf(lengthsOf(fit.corners)).every(
            (length, at) => Math.abs(length - listOf(measured)[at]!) < 1e-9,
          ),
        ).toBe(true);
      }),
    );
  });

  it('is the smallest change that an independent search finds if they disagree', () => {
    fc.assert(
      fc.property(anyShape, anyNoise, (shape, noise) => {
        const measured = withNoise(lengthsOf(shape), noise);
        const fit = fitQuad(measured)!;
        const found = sumOfSquares(fit.corners, measured);
        const searched = sumOfSquares(patternSearch(shape, measured), measured);
        expect(found).toBeLessThanOrEqual(searched + 1e-9);
        expect(found).toBeGreaterThan(searched - 1e-4);
        expect(fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0)).toBeCloseTo(found, 9);
      }),
      { numRuns: 25 },
    );
  });

  it('balances the changes at every corner, as at a minimum of least squares', () => {
    fc.assert(
      fc.property(anyShape, anyNoise, (shape, noise) => {
        const { corners, residuals } = fitQuad(withNoise(lengthsOf(shape), noise))!;
        const pairs = [
          [0, 1],
          [1, 2],
          [2, 3],
          [3, 0],
          [0, 2],
          [1, 3],
        ] as const;
        for (const axis of ['x', 'y'] as const) {
          const pulls = [0, 0, 0, 0];
          pairs.forEach(([from, to], index) => {
            const along =
              (corners[to][axis] - corners[from][axis]) / pointDistance(corners[from], corners[to]);
            pulls[from]! -= residuals[index]! * along;
            pulls[to]! += residuals[index]! * along;
          });
          for (const pull of pulls) expect(Math.abs(pull)).toBeLessThan(1e-7);
        }
      }),
    );
  });

  it('does not exist for lengths that cannot meet or would have to change by more than a tenth', () => {
    const square = { top: 10, right: 10, bottom: 10, left: 10, downToRight: 14.142, upToRight: 14.142 };
    expect(fitQuad(square)).not.toBeNull();
    expect(fitQuad({ ...square, downToRight: 25 })).toBeNull();
    expect(fitQuad({ ...square, upToRight: 9, downToRight: 9 })).toBeNull();
    expect(fitQuad({ ...square, bottom: 1 })).toBeNull();
  });
});

const starting = (change: Partial<CenterFindInput> = {}): CenterFindInput => ({
  ...centerFind.fromProject({
    outline: { shape: 'rectangle', width: inches(30), length: inches(40) },
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  }),
  ...change,
});
const answer = (change: Partial<CenterFindInput> = {}) => {
  const result = centerFind.calculate(starting(change));
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const inputOf = (lengths: SixLengths): Partial<CenterFindInput> => {
  const whole = (length: number) => lengthFromExact(length * UNITS_PER_INCH, 'nearest');
  return {
    top: whole(lengths.top),
    right: whole(lengths.right),
    bottom: whole(lengths.bottom),
    left: whole(lengths.left),
    downToRight: whole(lengths.downToRight),
    upToRight: whole(lengths.upToRight),
  };
};

describe('the center', () => {
  it('is the middle of a true rectangle by every method (derived: 30 by 40 has diagonals of 50)', () => {
    const { details } = answer({ downToRight: inches(50), upToRight: inches(50) });
    expect(details.best.x).toBeCloseTo(inches(15), 3);
    expect(details.best.y).toBeCloseTo(inches(20), 3);
    expect(details.apart).toBeLessThan(1e-3);
    expect(details.misfit).toBeLessThan(1e-3);
    expect(details.outOfSquare).toBeLessThan(1e-3);
    expect(details.fromSides.map((distance) => distance / UNITS_PER_INCH)).toEqual(
      [20, 15, 20, 15].map((distance) => expect.closeTo(distance, 6) as number),
    );
    for (const distance of details.fromCorners) expect(distance / UNITS_PER_INCH).toBeCloseTo(25, 6);
  });

  it('has the smallest sum of squared distances to the corners', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const { best, corners } = answer(inputOf(lengthsOf(shape))).details;
        const cost = (point: Point) =>
          corners.reduce((sum, corner) => sum + pointDistance(point, corner) ** 2, 0);
        for (const [x, y] of [
          [50, 0],
          [-50, 0],
          [0, 50],
          [0, -50],
        ] as const) {
          expect(cost({ x: best.x + x, y: best.y + y })).toBeGreaterThan(cost(best));
        }
      }),
      { numRuns: 50 },
    );
  });

  it('keeps its distances to the corners if the project is turned', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const measured = lengthsOf(shape);
        const turned: SixLengths = {
          top: measured.right,
          right: measured.bottom,
          bottom: measured.left,
          left: measured.top,
          downToRight: measured.upToRight,
          upToRight: measured.downToRight,
        };
        const [one, other] = [answer(inputOf(measured)).details, answer(inputOf(turned)).details];
        const again = [3, 0, 1, 2].map((at) => other.fromCorners[at]!);
        one.fromCorners.forEach((distance, at) => expect(distance).toBeCloseTo(again[at]!, 1));
        expect(one.outOfSquare).toBeCloseTo(other.outOfSquare, 0);
      }),
      { numRuns: 50 },
    );
  });
});

describe('a project out of square', () => {
  it('of 30 by 40 in, its top moved by 1 in, is off by 3/4 in at each corner (derived)', () => {
    const shape: Four = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 31, y: Math.sqrt(1599) },
      { x: 1, y: Math.sqrt(1599) },
    ];
    const { cornerReports, outOfSquare, best, diagonalsCross } = answer(inputOf(lengthsOf(shape))).details;
    // Along the shorter side of 30 in the corner is off by 30 · 1/40.
    expect(outOfSquare / UNITS_PER_INCH).toBeCloseTo(0.75, 3);
    expect(cornerReports.map(({ degrees }) => degrees)).toEqual(
      [88.567, 91.433, 88.567, 91.433].map((degrees) => expect.closeTo(degrees, 2) as number),
    );
    // The diagonals of a parallelogram still cross in the middle.
    expect(pointDistance(best, diagonalsCross)).toBeLessThan(3);
  });

  it('has angles that add up to a full turn', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const { cornerReports } = answer(inputOf(lengthsOf(shape))).details;
        expect(cornerReports.reduce((sum, { degrees }) => sum + degrees, 0)).toBeCloseTo(360, 6);
      }),
      { numRuns: 30 },
    );
  });
});

describe('lengths that disagree', () => {
  it('are shown next to lengths that fit together, with a warning if they disagree by more than the accuracy', () => {
    const { details, notes, tables } = answer({ downToRight: inches(51), upToRight: inches(50) });
    expect(details.misfit).toBeGreaterThan(inches(1 / 8));
    expect(details.rootMeanSquare).toBeLessThanOrEqual(details.misfit);
    expect(notes[0]?.says).toContain('Measure all six again');
    expect(tables.find(({ title }) => title.startsWith('Your lengths'))?.rows).toHaveLength(6);
    expect(answer().notes[0]?.says).not.toContain('Measure all six again');
  });

  it('have no warning if they disagree by no more than the accuracy', () => {
    const bounds = { downToRight: inches(50.125), upToRight: inches(50) };
    const { details, notes } = answer(bounds);
    const warned = notes.filter(({ says }) => says.includes('Measure all six again'));
    expect(warned).toHaveLength(0);
    const sharper = answer({ ...bounds, accuracy: lengthFromExact(details.misfit - 1, 'down') });
    expect(sharper.notes[0]?.values).toMatchObject({ misfit: { exact: details.misfit } });
  });

  it('are not mentioned if they agree to within 1/64 in, as those of a 60 in square do', () => {
    const style = {
      display: { system: 'inch', inchStep: 8 },
      currency: currencyFromCode('USD'),
      locale: 'en-US',
    } as const;
    const printed = (change: Partial<CenterFindInput>) =>
      answer(change).figures.map(({ label, quantity }) => {
        const exact = formatExactQuantity(quantity, style);
        return `${label}: ${formatQuantity(quantity, style)}${exact === null ? '' : ` (${exact})`}`;
      });
    const square = { top: inches(60), right: inches(60), bottom: inches(60), left: inches(60) };
    const diagonal = lengthFromExact(60 * Math.SQRT2 * UNITS_PER_INCH, 'nearest');
    expect(printed({ ...square, downToRight: diagonal, upToRight: diagonal })).toEqual([
      'Center from the left side: 30 in',
      'Center from the top side: 30 in',
      'The methods differ by: 0 in',
      'Your six lengths: Your measurements agree.',
      'Out of square by: 0 in',
    ]);
    expect(printed({ downToRight: inches(50.25), upToRight: inches(50) })[3]).toMatch(
      /^One length alone would have to change by: ¼ in/,
    );
  });

  it('of a top of 48 1/2 in where 48 belongs are not spread over six lengths: the warning names the top and 48 in', () => {
    const sides = { top: inches(48.5), bottom: inches(48), left: inches(36), right: inches(36) };
    const { notes, details } = answer({ ...sides, downToRight: inches(60), upToRight: inches(60) });
    expect(details.misfit / UNITS_PER_INCH).toBeGreaterThan(0.35);
    expect(notes[0]).toMatchObject({ kind: 'warning', values: { misfit: { exact: details.misfit } } });
    expect(notes[1]?.says).toContain('Measure this one first');
    expect(notes[1]?.values).toMatchObject({
      first: { text: 'top side' },
      fits: { rounded: inches(48) },
    });
  });

  it('are not said to be of one length if two are equally suspect', () => {
    const square = { top: inches(40), bottom: inches(40), left: inches(40), right: inches(40) };
    const diagonal = lengthFromExact(40 * Math.SQRT2 * UNITS_PER_INCH, 'nearest');
    const spread = { downToRight: lengthFromExact(diagonal + inches(0.5), 'nearest'), upToRight: diagonal };
    const one = answer({ ...square, ...spread, accuracy: inches(1 / 8) });
    expect(one.details.suspects.map(({ name }) => name)).toEqual(['downToRight']);
    const leaning = { ...square, downToRight: inches(57), upToRight: inches(57) };
    const both = answer({ ...leaning, accuracy: inches(1 / 8) });
    expect(both.details.suspects.map(({ name }) => name)).toEqual(['downToRight', 'upToRight']);
    expect(both.notes[1]?.says).toContain('Two lengths are equally suspect');
  });

  it('are refused if they cannot meet', () => {
    expect(centerFind.calculate(starting({ downToRight: inches(90) }))).toMatchObject({
      ok: false,
      error: { code: 'lengths-do-not-meet' },
    });
  });
});

describe('a motif', () => {
  it('off the middle has a figure for the direction and distance to move', () => {
    const { details, figures } = answer({
      hasMotif: true,
      motifFromLeft: inches(15.5),
      motifFromTop: inches(19),
    });
    expect(details.move!.x / UNITS_PER_INCH).toBeCloseTo(-0.5, 3);
    expect(details.move!.y / UNITS_PER_INCH).toBeCloseTo(1, 3);
    expect(details.apart / UNITS_PER_INCH).toBeCloseTo(Math.hypot(0.5, 1), 3);
    expect(figures.map(({ label }) => label)).toContain('From the middle of the motif, move left');
    expect(figures.map(({ label }) => label)).toContain('and down');
  });

  it('in the middle, or off by no more than the accuracy, needs no decision', () => {
    const starts = (fromLeft: number, accuracy = 1 / 8) => {
      const motif = { hasMotif: true, motifFromLeft: inches(fromLeft), motifFromTop: inches(20) };
      const square = { downToRight: inches(50), upToRight: inches(50), accuracy: inches(accuracy) };
      return answer({ ...motif, ...square })
        .notes.filter(({ kind }) => kind !== 'caution')
        .map(({ says }) => says.split(' ').slice(0, 4).join(' '));
    };
    const always = ['Lay the project flat', 'This check sees a', 'A hole can’t be'];
    expect(starts(15)).toEqual(always);
    expect(starts(15.0625)).toEqual(always);
    expect(starts(15.25)).toEqual(['The methods give centers', 'The middle of the', ...always]);
    const { notes } = answer({
      hasMotif: true,
      motifFromLeft: inches(16),
      downToRight: inches(50),
      upToRight: inches(50),
    });
    expect(notes[0]?.values).toMatchObject({ apart: { rounded: inches(1) } });
  });

  it('is measured at right angles to the left side, also if that side leans', () => {
    const leaning: Four = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 33, y: 40 },
      { x: 3, y: 40 },
    ];
    const motif = { hasMotif: true, motifFromLeft: inches(10), motifFromTop: inches(20) };
    const found = answer({ ...inputOf(lengthsOf(leaning)), ...motif }).details.motif!;
    const [x, y] = [found.x / UNITS_PER_INCH, found.y / UNITS_PER_INCH];
    expect(y).toBeCloseTo(20, 3);
    expect((x * 40 - y * 3) / Math.hypot(40, 3)).toBeCloseTo(10, 3);
  });

  it('outside the project is refused', () => {
    const result = centerFind.calculate(starting({ hasMotif: true, motifFromLeft: inches(31) }));
    expect(result).toMatchObject({ ok: false, error: { code: 'motif-outside' } });
  });
});

it('draws every corner and center inside the drawing', () => {
  const { diagram } = answer({ hasMotif: true, right: inches(40.5), downToRight: inches(50.25) });
  for (const part of diagram!.parts) {
    const points = part.part === 'polygon' ? part.points : part.part === 'circle' ? [part.center] : [];
    for (const { x, y } of points) {
      expect(x).toBeGreaterThanOrEqual(-1e-6);
      expect(x).toBeLessThanOrEqual(diagram!.width + 1e-6);
      expect(y).toBeGreaterThanOrEqual(-1e-6);
      expect(y).toBeLessThanOrEqual(diagram!.height + 1e-6);
    }
  }
});

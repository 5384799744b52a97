import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centerFind } from '#core/calculators/center/center-find/center-find';
import type { CenterFindInput } from '#core/calculators/center/center-find/input';
import { fitQuad, type SixLengths } from '#core/calculators/center/center-find/quad-fit';
import { solveLinear } from '#core/calculators/center/center-find/solve-linear';
import { STARTING_HABITS } from '#core/domain/workshop';
import { type Point, pointDistance } from '#core/geometry/point';
import { lengthFromExact, lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';

type Four = readonly [Point, Point, Point, Point];

const lengthsOf = ([a, b, c, d]: Four): SixLengths => ({
  top: pointDistance(a, b),
  right: pointDistance(b, c),
  bottom: pointDistance(c, d),
  left: pointDistance(d, a),
  falling: pointDistance(a, c),
  rising: pointDistance(b, d),
});
const listOf = (lengths: SixLengths) => [
  lengths.top,
  lengths.right,
  lengths.bottom,
  lengths.left,
  lengths.falling,
  lengths.rising,
];
const sumOfSquares = (corners: Four, measured: SixLengths) => {
  const fitted = listOf(lengthsOf(corners));
  return listOf(measured).reduce((sum, length, index) => sum + ((fitted[index] ?? 0) - length) ** 2, 0);
};

/** Moves one coordinate of one corner at a time, by ever smaller steps, as long as that helps: slow, and sure of nothing but downhill. */
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

/** A piece about a rectangle, each corner off by up to an inch and a half; inches, top left corner first, y down. */
const anyPiece: fc.Arbitrary<Four> = fc
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
  falling: lengths.falling + noise[4]!,
  rising: lengths.rising + noise[5]!,
});

describe('the shape of six lengths', () => {
  it('is found again exactly where they agree', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const measured = lengthsOf(piece);
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

  it('is the least change an independent search finds where they do not', () => {
    fc.assert(
      fc.property(anyPiece, anyNoise, (piece, noise) => {
        const measured = withNoise(lengthsOf(piece), noise);
        const fit = fitQuad(measured)!;
        const found = sumOfSquares(fit.corners, measured);
        const searched = sumOfSquares(patternSearch(piece, measured), measured);
        expect(found).toBeLessThanOrEqual(searched + 1e-9);
        expect(found).toBeGreaterThan(searched - 1e-4);
        expect(fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0)).toBeCloseTo(found, 9);
      }),
      { numRuns: 25 },
    );
  });

  it('changes lengths in step with a self-stress: at the least change no corner is pulled anywhere', () => {
    fc.assert(
      fc.property(anyPiece, anyNoise, (piece, noise) => {
        const { corners, residuals } = fitQuad(withNoise(lengthsOf(piece), noise))!;
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

  it('does not exist for lengths that cannot meet, or only after a change of more than a tenth', () => {
    const square = { top: 10, right: 10, bottom: 10, left: 10, falling: 14.142, rising: 14.142 };
    expect(fitQuad(square)).not.toBeNull();
    expect(fitQuad({ ...square, falling: 25 })).toBeNull();
    expect(fitQuad({ ...square, rising: 9, falling: 9 })).toBeNull();
    expect(fitQuad({ ...square, bottom: 1 })).toBeNull();
  });
});

describe('linear equations', () => {
  it('are solved so that the solution fits, with rows in any order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 12, maxLength: 12 }),
        (numbers) => {
          const matrix = [numbers.slice(0, 3), numbers.slice(3, 6), numbers.slice(6, 9)];
          const solution = solveLinear(matrix, numbers.slice(9));
          if (solution === null) return;
          matrix.forEach((row, index) => {
            const sum = row.reduce((so, value, at) => so + value * solution[at]!, 0);
            expect(sum).toBeCloseTo(numbers[9 + index]!, 6);
          });
        },
      ),
    );
    expect(
      solveLinear(
        [
          [0, 1],
          [1, 0],
        ],
        [2, 3],
      ),
    ).toEqual([3, 2]);
  });

  it('without a single solution have none', () => {
    expect(
      solveLinear(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeNull();
  });
});

const starting = (change: Partial<CenterFindInput> = {}): CenterFindInput => ({
  ...centerFind.fromProject({
    outline: { shape: 'rectangle', width: inches(30), length: inches(40) },
    hole: null,
    hasSlit: false,
    settings: STARTING_HABITS,
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
    falling: whole(lengths.falling),
    rising: whole(lengths.rising),
  };
};

describe('the center', () => {
  it('of a true rectangle is its middle whichever way it is found; 30 by 40 has diagonals of 50', () => {
    const { details } = answer({ falling: inches(50), rising: inches(50) });
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

  it('lies where the midlines cross, and no nearby point has a smaller sum of squares to the corners', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const { best, corners } = answer(inputOf(lengthsOf(piece))).details;
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

  it('keeps its distances to the corners however the piece is turned or read', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const measured = lengthsOf(piece);
        const turned: SixLengths = {
          top: measured.right,
          right: measured.bottom,
          bottom: measured.left,
          left: measured.top,
          falling: measured.rising,
          rising: measured.falling,
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

describe('a piece out of square', () => {
  it('of 30 by 40 pushed over by 1 in is out by that at each corner, and its diagonals differ', () => {
    const piece: Four = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 31, y: Math.sqrt(1599) },
      { x: 1, y: Math.sqrt(1599) },
    ];
    const { cornerReports, outOfSquare, best, diagonalsCross } = answer(inputOf(lengthsOf(piece))).details;
    // Over the shorter side of 30 in the corner is out by 30 · 1/40.
    expect(outOfSquare / UNITS_PER_INCH).toBeCloseTo(0.75, 3);
    expect(cornerReports.map(({ degrees }) => degrees)).toEqual(
      [88.567, 91.433, 88.567, 91.433].map((degrees) => expect.closeTo(degrees, 2) as number),
    );
    // A parallelogram's diagonals still halve each other.
    expect(pointDistance(best, diagonalsCross)).toBeLessThan(3);
  });

  it('has its angles add up to a full turn', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const { cornerReports } = answer(inputOf(lengthsOf(piece))).details;
        expect(cornerReports.reduce((sum, { degrees }) => sum + degrees, 0)).toBeCloseTo(360, 6);
      }),
      { numRuns: 30 },
    );
  });
});

describe('lengths that disagree', () => {
  it('are shown with what each would have to be, and a warning past the accuracy', () => {
    const { details, notes, tables } = answer({ falling: inches(51), rising: inches(50) });
    expect(details.misfit).toBeGreaterThan(inches(1 / 8));
    expect(details.rootMeanSquare).toBeLessThanOrEqual(details.misfit);
    expect(notes[0]?.says).toContain('Measure all six again');
    expect(tables.find(({ title }) => title.startsWith('Your lengths'))?.rows).toHaveLength(6);
    expect(answer().notes[0]?.says).not.toContain('Measure all six again');
  });

  it('are no worse than measured as long as they disagree by no more than the accuracy', () => {
    const { details, notes } = answer({ falling: inches(50.25), rising: inches(50) });
    const bounds = { falling: inches(50.25), rising: inches(50) };
    const warned = notes.filter(({ says }) => says.includes('Measure all six again'));
    expect(warned).toHaveLength(0);
    const sharper = answer({ ...bounds, accuracy: lengthFromExact(details.misfit, 'down') });
    expect(sharper.notes[0]?.values).toMatchObject({ misfit: { exact: details.misfit } });
  });

  it('that cannot meet are refused', () => {
    expect(centerFind.calculate(starting({ falling: inches(90) }))).toMatchObject({
      ok: false,
      error: { code: 'lengths-do-not-meet' },
    });
  });
});

describe('a motif', () => {
  it('off the middle is told which way to move from', () => {
    const { details, figures } = answer({
      hasMotif: true,
      motifFromLeft: inches(15.5),
      motifFromTop: inches(19),
    });
    expect(details.move!.x / UNITS_PER_INCH).toBeCloseTo(-0.5, 3);
    expect(details.move!.y / UNITS_PER_INCH).toBeCloseTo(1, 3);
    expect(details.apart / UNITS_PER_INCH).toBeCloseTo(Math.hypot(0.5, 1), 3);
    expect(figures.map(({ label }) => label)).toContain('From the motif’s middle, move left');
    expect(figures.map(({ label }) => label)).toContain('and down');
  });

  it('that is the middle, or off by no more than one measures, needs no decision', () => {
    const told = (fromLeft: number, accuracy = 1 / 8) => {
      const motif = { hasMotif: true, motifFromLeft: inches(fromLeft), motifFromTop: inches(20) };
      const square = { falling: inches(50), rising: inches(50), accuracy: inches(accuracy) };
      return answer({ ...motif, ...square }).notes.map(({ says }) => says.split(' ').slice(0, 5).join(' '));
    };
    const always = ['Measure flat, without pulling, from', 'A hole in a finished'];
    expect(told(15)).toEqual(always);
    expect(told(15.0625)).toEqual(always);
    expect(told(15.25)).toEqual(['The ways to find the', 'The motif’s own middle is', ...always]);
    const { notes } = answer({
      hasMotif: true,
      motifFromLeft: inches(16),
      falling: inches(50),
      rising: inches(50),
    });
    expect(notes[0]?.values).toMatchObject({ apart: { rounded: inches(1) } });
  });

  it('is measured square to the left side, also where that side leans', () => {
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

  it('outside the piece is refused', () => {
    const result = centerFind.calculate(starting({ hasMotif: true, motifFromLeft: inches(31) }));
    expect(result).toMatchObject({ ok: false, error: { code: 'motif-outside' } });
  });
});

it('draws every corner and center within its drawing', () => {
  const { diagram } = answer({ hasMotif: true, right: inches(40.5), falling: inches(50.25) });
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

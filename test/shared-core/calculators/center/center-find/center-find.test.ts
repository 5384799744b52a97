import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centerFind } from '#core/calculators/center/center-find/center-find';
import { apartOf } from '#core/calculators/center/center-find/found';
import type { Measured } from '#core/calculators/center/center-find/input';
import type { Calculation } from '#core/calculators/calculator';
import type { Quantity } from '#core/calculators/explanation';
import { formatExactQuantity, formatQuantity } from '#core/calculators/format-quantity';
import { type Point, pointDistance } from '#core/geometry/point';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { fourSidesOf, wholeUnits } from '#test/helpers/measured-pieces';

const answerTo = (measured: Measured, accuracy = inches(1 / 8)) => {
  const result = centerFind.calculate({ measured, accuracy });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};

const rectangle = (width: number, height: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
const thirtyByForty = fourSidesOf(rectangle(30, 40));
type FourSides = typeof thirtyByForty;
const answer = (change: Partial<FourSides> = {}, accuracy = inches(1 / 8)) =>
  answerTo({ ...thirtyByForty, ...change }, accuracy);

const exactOf = (quantity: Quantity | undefined) => (quantity?.kind === 'length' ? quantity.exact : NaN);
const figure = ({ figures }: Calculation, label: string) =>
  exactOf(figures.find((one) => one.label === label)?.quantity) / UNITS_PER_INCH;
const rowOf = ({ tables }: Calculation, title: string, row: string) =>
  tables
    .find((table) => table.title === title)
    ?.rows.find(([name]) => name?.kind === 'words' && name.text === row) ?? [];

/** Nearly a rectangle, each corner off by up to an inch and a half; in inches, top left corner first, y down. */
const anyShape: fc.Arbitrary<readonly Point[]> = fc
  .record({
    width: fc.integer({ min: 20, max: 90 }),
    height: fc.integer({ min: 20, max: 90 }),
    off: fc.array(fc.integer({ min: -12, max: 12 }), { minLength: 8, maxLength: 8 }),
  })
  .map(({ width, height, off }) =>
    rectangle(width, height).map(({ x, y }, at) => ({
      x: x + off[2 * at]! / 8,
      y: y + off[2 * at + 1]! / 8,
    })),
  );

describe('four sides and two diagonals', () => {
  it('of 30, 40 and 50 in have their center 25 in from every corner by every method (derived)', () => {
    const answered = answer();
    const { details } = answered;
    expect(details.arcs).toHaveLength(4);
    for (const { distance } of details.arcs) expect(distance / UNITS_PER_INCH).toBeCloseTo(25, 6);
    expect(apartOf(details)).toBeLessThan(1e-3);
    expect(details.closure.error).toBeLessThan(1e-3);
    expect(figure(answered, 'Out of square by')).toBeLessThan(1e-3);
    const fromSides = ['top side', 'right side', 'bottom side', 'left side'].map((side) =>
      exactOf(rowOf(answered, 'The center from the sides, at right angles', side)[1]),
    );
    expect(fromSides.map((distance) => distance / UNITS_PER_INCH)).toEqual(
      [20, 15, 20, 15].map((distance) => expect.closeTo(distance, 6) as number),
    );
  });

  it('lead with three arcs to chalk, from corners of the finished edge', () => {
    expect(
      answer()
        .figures.slice(0, 3)
        .map(({ label }) => label),
    ).toEqual([
      'Chalk an arc from the top left corner at',
      'Chalk an arc from the top right corner at',
      'Chalk an arc from the bottom right corner at',
    ]);
    const said = answer().notes.map(({ says }) => says);
    expect(said.some((one) => one.includes('corner to corner of the finished edge, all four alike'))).toBe(
      true,
    );
    expect(said.join()).not.toContain('raw corner');
  });

  it('of which 15, 20 and 25 are a right corner, and 30 by 20 has a diagonal of 36.056', () => {
    // Common practice: the 3-4-5 check of a corner.
    expect(figure(answerTo(fourSidesOf(rectangle(15, 20))), 'Out of square by')).toBeLessThan(1e-3);
    expect(fourSidesOf(rectangle(15, 20)).downToRight).toBe(inches(25));
    const measured = {
      ...fourSidesOf(rectangle(30, 20)),
      downToRight: wholeUnits(36.056),
      upToRight: wholeUnits(36.056),
    };
    expect(figure(answerTo(measured), 'Out of square by')).toBeLessThan(0.001);
  });

  it.each([
    [60, 80, 1 / 4, 0.149, 0.156],
    [12.5, 12.5, 1 / 8, 0.405, 0.088],
  ])(
    'of %d by %d in whose diagonals differ by %d in lean by %d° (derived)',
    (width, height, apart, degrees, off) => {
      // d₁² + d₂² = 2(a² + b²) of a parallelogram gives both diagonals.
      const mean = Math.sqrt(width ** 2 + height ** 2 - apart ** 2 / 4);
      const sides = fourSidesOf(rectangle(width, height));
      const measured = {
        ...sides,
        downToRight: wholeUnits(mean + apart / 2),
        upToRight: wholeUnits(mean - apart / 2),
      };
      const answered = answerTo(measured);
      expect(figure(answered, 'Out of square by')).toBeCloseTo(off, 3);
      const angle = rowOf(answered, 'Corners', 'top right')[2];
      expect(angle?.kind === 'degrees' && Math.abs(angle.exact)).toBeCloseTo(degrees, 3);
    },
  );

  it('have a center with the smallest sum of squared distances to the corners', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const { centers, picture } = answerTo(fourSidesOf(shape)).details;
        const best = centers[0]!.point;
        const corners = picture.named.map(({ point }) => point);
        const cost = (point: Point) => corners.reduce((sum, one) => sum + pointDistance(point, one) ** 2, 0);
        for (const [x, y] of [
          [50, 0],
          [-50, 0],
          [0, 50],
          [0, -50],
        ] as const)
          expect(cost({ x: best.x + x, y: best.y + y })).toBeGreaterThan(cost(best));
      }),
      { numRuns: 50 },
    );
  });

  it('have the same arcs if the piece is turned', () => {
    fc.assert(
      fc.property(anyShape, ([a, b, c, d]) => {
        const arcs = (corners: readonly Point[]) =>
          answerTo(fourSidesOf(corners)).details.arcs.map(({ distance }) => distance);
        const [one, other] = [arcs([a!, b!, c!, d!]), arcs([b!, c!, d!, a!])];
        one.forEach((distance, at) => expect(distance).toBeCloseTo(other[(at + 3) % 4]!, 1));
      }),
      { numRuns: 50 },
    );
  });

  it('are changed as little as they measure: lengths of a true shape stay, and its corners come back', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const { fitted, lengths, picture } = answerTo(fourSidesOf(shape)).details;
        fitted.forEach((length, at) => expect(Math.abs(length - lengths[at]!.measured)).toBeLessThan(1));
        const corners = picture.named.map(({ point }) => point);
        corners.forEach((corner, at) => {
          const next = corners[(at + 1) % 4]!;
          const true1 = pointDistance(shape[at]!, shape[(at + 1) % 4]!) * UNITS_PER_INCH;
          expect(Math.abs(pointDistance(corner, next) - true1)).toBeLessThan(3);
        });
      }),
      { numRuns: 50 },
    );
  });
});

describe('a project out of square', () => {
  it('of 30 by 40 in, its top moved by 1 in, is off by 3/4 in at each corner (derived)', () => {
    const down = Math.sqrt(1599);
    const shape = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 31, y: down },
      { x: 1, y: down },
    ];
    const answered = answerTo(fourSidesOf(shape));
    // Along the shorter side of 30 in the corner is off by 30 · 1/40.
    expect(figure(answered, 'Out of square by')).toBeCloseTo(0.75, 3);
    // The diagonals of a parallelogram still cross in the middle.
    expect(apartOf(answered.details)).toBeLessThan(3);
  });

  it('has angles that add up to a full turn', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const table = answerTo(fourSidesOf(shape)).tables.find(({ title }) => title === 'Corners')!;
        const angles = table.rows.map(([, angle]) => (angle?.kind === 'degrees' ? angle.exact : NaN));
        expect(angles.reduce((sum, angle) => sum + angle, 0)).toBeCloseTo(360, 6);
      }),
      { numRuns: 30 },
    );
  });
});

describe('lengths that disagree', () => {
  it('are shown next to lengths that fit together, with a warning if they disagree by more than the accuracy', () => {
    const { details, notes, tables } = answer({ downToRight: inches(51) });
    expect(details.closure.error).toBeGreaterThan(inches(1 / 8));
    expect(notes[0]?.says).toContain('Measure again before you cut');
    expect(notes[0]?.values).toMatchObject({ misfit: { exact: details.closure.error } });
    expect(tables.find(({ title }) => title.startsWith('Your lengths'))?.rows).toHaveLength(6);
    expect(answer().notes[0]?.says).not.toContain('Measure again before you cut');
  });

  it('have no warning if they disagree by no more than the accuracy', () => {
    const off = { downToRight: inches(50.125) };
    const { details, notes } = answer(off);
    expect(notes.filter(({ says }) => says.includes('Measure again'))).toHaveLength(0);
    const sharper = answer(off, lengthFromUnits(Math.floor(details.closure.error!) - 1));
    expect(sharper.notes[0]?.says).toContain('do not fit together');
  });

  it('are not mentioned if they agree to an eighth of the accuracy, as those of a 60 in square do', () => {
    const style = {
      display: { system: 'inch', inchStep: 8 },
      currency: currencyFromCode('USD'),
      locale: 'en-US',
    } as const;
    const printed = (measured: Measured) =>
      answerTo(measured).figures.map(({ label, quantity }) => {
        const exact = formatExactQuantity(quantity, style);
        return `${label}: ${formatQuantity(quantity, style)}${exact === null ? '' : ` (${exact})`}`;
      });
    expect(printed(fourSidesOf(rectangle(60, 80)))).toEqual([
      'Chalk an arc from the top left corner at: 50 in',
      'Chalk an arc from the top right corner at: 50 in',
      'Chalk an arc from the bottom right corner at: 50 in',
      'Your lengths: They fit together.',
      'The methods differ by: 0 in',
      'Out of square by: 0 in',
    ]);
    expect(printed({ ...thirtyByForty, downToRight: inches(50.25) })[3]).toMatch(
      /^One length alone would have to change by: ¼ in/,
    );
  });

  it('of a top of 48 1/2 in where 48 belongs are not spread over six lengths: the warning names the top and 48 in', () => {
    const { notes, details } = answerTo({ ...fourSidesOf(rectangle(48, 36)), top: inches(48.5) });
    expect(details.closure.error! / UNITS_PER_INCH).toBeGreaterThan(0.35);
    expect(notes[0]).toMatchObject({ kind: 'warning', values: { misfit: { exact: details.closure.error } } });
    expect(notes[1]?.says).toContain('Measure this one first');
    expect(notes[1]?.values).toMatchObject({ first: { text: 'top side' }, fits: { rounded: inches(48) } });
  });

  it('are not said to be of one length if two are equally suspect', () => {
    const square = fourSidesOf(rectangle(40, 40));
    const longer = lengthFromUnits(square.downToRight + inches(0.5));
    const suspects = (measured: Measured) => {
      const { details, notes } = answerTo(measured);
      return [details.closure.suspects.map(({ index }) => details.lengths[index]!.words), notes[1]?.says];
    };
    expect(suspects({ ...square, downToRight: longer })[0]).toEqual([
      'diagonal from top left to bottom right',
    ]);
    const [both, says] = suspects({ ...square, downToRight: inches(57), upToRight: inches(57) });
    expect(both).toHaveLength(2);
    expect(says).toContain('Two lengths are equally suspect');
  });

  it('are refused if they cannot meet, or if the piece would be pushed in', () => {
    const refused = { ok: false, error: { code: 'lengths-do-not-meet', field: ['measured', 'downToRight'] } };
    const refusalOf = (measured: Measured) => centerFind.calculate({ measured, accuracy: inches(1 / 8) });
    expect(refusalOf({ ...thirtyByForty, downToRight: inches(90) })).toMatchObject(refused);
    const pushedIn = [...rectangle(40, 40).slice(0, 2), { x: 12, y: 10 }, { x: 0, y: 40 }];
    expect(refusalOf(fourSidesOf(pushedIn))).toMatchObject(refused);
  });
});

describe('a motif', () => {
  const at = (fromLeft: number, fromTop: number) => ({
    hasMotif: true,
    motifFromLeft: inches(fromLeft),
    motifFromTop: inches(fromTop),
  });

  it('off the middle has a figure for the direction and distance to move', () => {
    const answered = answer(at(15.5, 19));
    expect(figure(answered, 'From the middle of the motif, move left')).toBeCloseTo(0.5, 3);
    expect(figure(answered, 'and down')).toBeCloseTo(1, 3);
    expect(apartOf(answered.details) / UNITS_PER_INCH).toBeCloseTo(Math.hypot(0.5, 1), 3);
  });

  it('in the middle, or off by no more than the accuracy, needs no decision', () => {
    const says = (fromLeft: number) =>
      answer(at(fromLeft, 20))
        .notes.filter(({ kind }) => kind !== 'caution')
        .map((note) => note.says.split(' ').slice(0, 4).join(' '));
    const always = ['Lay the project flat', 'On a piece {size}', 'A hole can’t be'];
    expect(says(15)).toEqual(always);
    expect(says(15.0625)).toEqual(always);
    expect(says(15.25)).toEqual(['The methods give centers', 'The middle of the', ...always]);
  });

  it('is measured at right angles to the left side, also if that side leans', () => {
    const leaning = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 33, y: 40 },
      { x: 3, y: 40 },
    ];
    const { motif } = answerTo({ ...fourSidesOf(leaning), ...at(10, 20) }).details.picture;
    const [x, y] = [motif!.x / UNITS_PER_INCH, motif!.y / UNITS_PER_INCH];
    expect(y).toBeCloseTo(20, 3);
    expect((x * 40 - y * 3) / Math.hypot(40, 3)).toBeCloseTo(10, 3);
  });

  it('outside the project is refused', () => {
    const measured = { ...thirtyByForty, ...at(31, 20) };
    expect(centerFind.calculate({ measured, accuracy: inches(1 / 8) })).toMatchObject({
      ok: false,
      error: { code: 'motif-outside', field: ['measured', 'motifFromLeft'] },
    });
  });
});

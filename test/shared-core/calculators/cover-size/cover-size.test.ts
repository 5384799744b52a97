import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holeSize } from '#core/calculators/center/hole-size/hole-size';
import { coverSize } from '#core/calculators/cover-size/cover-size';
import type { CoverSizeInput } from '#core/calculators/cover-size/input';
import { type CoveredThing, workOutCoverSize } from '#core/calculators/cover-size/work';
import { outlineSchema } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { type Length, lengthFromInches as inches, lengthFromUnits } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';

const start = coverSize.fromProject({
  outline: { shape: 'square', side: inches(40) },
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
});
/** Never washed, so that it is made in the size it has in place. */
const unwashed = (change: Partial<CoverSizeInput>): CoverSizeInput => ({
  ...start,
  acrossPercent: 0,
  alongPercent: 0,
  ...change,
});
const sizeOf = ({ over, ...change }: Partial<CoverSizeInput> & { readonly over: CoveredThing }) =>
  workOutCoverSize(unwashed(change), over);
const bed = (width: number, length: number, footDrop: number, pillowFold = 0) =>
  ({
    over: 'bed',
    width: inches(width),
    length: inches(length),
    footDrop: inches(footDrop),
    pillowFold: inches(pillowFold),
  }) as const;

describe('over a round table', () => {
  // Common practice: table, drop and cover.
  it.each([
    [30, 17, 64],
    [48, 12, 72],
    [60, 15, 90],
    [60, 30, 120],
  ])('of %d in with a drop of %d in it is %d in across', (diameter, drop, across) => {
    const size = sizeOf({ over: { over: 'round', diameter: inches(diameter) }, drop: inches(drop) });
    expect([size.width, size.makeWidth, size.cornerDrop]).toEqual([inches(across), inches(across), null]);
    expect(size.outline).toEqual({ shape: 'circle', diameter: inches(across) });
  });

  // Derived: 72 in ÷ 0.97 are 74.23, and 3% of that are lost again when it is quilted. In the drawing the table is 48 in across.
  it('is pieced larger than it is made, and drawn with the table below it', () => {
    const input = unwashed({ drop: inches(12), over: { over: 'round', diameter: inches(48) } });
    const { figures, diagram } = answerOf(coverSize, { ...input, quiltingPercent: 3 });
    const top = figures.find(({ label }) => label === 'Top, before it is quilted')?.quantity;
    expect(top).toMatchObject({ rounded: inches(74.25) });
    expect(inches(74.25) * 0.97).toBeGreaterThanOrEqual(inches(72));
    const circles = diagram!.parts.flatMap((part) => (part.part === 'circle' ? [part.radius] : []));
    expect(circles).toEqual([inches(36), inches(24)]);
    const { quiltingPercent: _, ...older } = input;
    expect(coverSize.input.parse(older)).toEqual({ ...input, quiltingPercent: 0 });
  });

  it('is made larger by the direction that shrinks more', () => {
    const { makeWidth } = workOutCoverSize(
      { ...unwashed({ drop: inches(12) }), acrossPercent: 4, alongPercent: 10 },
      { over: 'round', diameter: inches(48) },
    );
    // 72 ÷ 0.9.
    expect(makeWidth).toBe(inches(80));
  });
});

describe('over a bed', () => {
  // Published: LES (drop 12 on three sides); OUR-Q (queen, 12 at the sides and 14 at the foot).
  it.each([
    [39, 75, 12, 12, 63, 87],
    [54, 75, 12, 12, 78, 87],
    [60, 80, 12, 12, 84, 92],
    [60, 80, 12, 14, 84, 94],
  ])('of %d by %d in, with %d in at the sides and %d in at the foot, it is %d by %d in', (...sizes) => {
    const [width, length, drop, footDrop, across, along] = sizes;
    const size = sizeOf({ over: bed(width, length, footDrop), drop: inches(drop) });
    expect([size.width, size.length]).toEqual([inches(across), inches(along)]);
    expect(size.outline).toEqual({ shape: 'rectangle', width: inches(across), length: inches(along) });
  });

  // Common practice: a corner hangs √2 as far as equal drops: 12 in 16.97, 18 in 25.46.
  it.each([
    [12, 16.97],
    [18, 25.46],
  ])('a corner between drops of %d in hangs down %d in', (drop, corner) => {
    const { cornerDrop } = sizeOf({ over: bed(60, 80, drop), drop: inches(drop) });
    expect(cornerDrop! / inches(1)).toBeCloseTo(corner, 2);
  });

  it('is drawn with the mattress between its drops, below the fold for the pillows', () => {
    const over = bed(60, 80, 14, 12);
    const { diagram } = answerOf(coverSize, unwashed({ drop: inches(13), over }));
    const [cover, mattress] = diagram!.parts.flatMap((part) =>
      part.part === 'polygon' ? [part.points] : [],
    );
    const ends = (points: readonly { readonly x: number; readonly y: number }[]) =>
      [Math.min, Math.max].map((end) => ({
        x: end(...points.map(({ x }) => x)),
        y: end(...points.map(({ y }) => y)),
      }));
    const [[from, to], [head, foot]] = [ends(cover!), ends(mattress!)];
    const gaps = [head!.x - from!.x, to!.x - foot!.x, head!.y - from!.y, to!.y - foot!.y];
    [13, 13, 12, 14].forEach((gap, at) => expect(gaps[at]).toBeCloseTo(inches(gap), 0));
  });

  it('has the fold for the pillows in its length only', () => {
    const [plain, folded] = [sizeOf({ over: bed(60, 80, 12) }), sizeOf({ over: bed(60, 80, 12, 12) })];
    expect([folded.width - plain.width, folded.length - plain.length]).toEqual([0, inches(12)]);
  });
});

const anyLength = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: inches(least), max: inches(most) }).map(lengthFromUnits);
const anyOver = fc.oneof(
  fc.record({ over: fc.constant('round' as const), diameter: anyLength(10, 100) }),
  fc.record({
    over: fc.constant('rectangle' as const),
    width: anyLength(10, 100),
    length: anyLength(10, 100),
  }),
  fc.record({
    over: fc.constant('bed' as const),
    width: anyLength(20, 90),
    length: anyLength(40, 90),
    footDrop: anyLength(0, 30),
    pillowFold: anyLength(0, 15),
  }),
);

describe('whatever it goes over', () => {
  it('washed, it is no smaller than it should be in place, and less than a step larger', () => {
    const percent = fc.integer({ min: 0, max: 30 });
    fc.assert(
      fc.property(anyOver, anyLength(0, 40), percent, percent, (over, drop, acrossPercent, alongPercent) => {
        const input = { ...start, drop, acrossPercent, alongPercent };
        const size = workOutCoverSize(input, over);
        const [across, along] =
          over.over === 'round'
            ? [Math.max(acrossPercent, alongPercent), Math.max(acrossPercent, alongPercent)]
            : [acrossPercent, alongPercent];
        const washed = [size.makeWidth * (1 - across / 100), size.makeLength * (1 - along / 100)];
        for (const [index, inPlace] of [size.width, size.length].entries()) {
          expect(washed[index]).toBeGreaterThanOrEqual(inPlace - 1e-6);
          expect(washed[index]).toBeLessThan(inPlace + input.cutStep);
        }
      }),
    );
  });

  it('decides an outline that a project can have', () => {
    fc.assert(
      fc.property(anyOver, anyLength(0, 40), (over, drop) => {
        const { details } = answerOf(coverSize, { ...start, over, drop });
        expect(outlineSchema.safeParse(coverSize.decides!(details).outline).success).toBe(true);
      }),
    );
  });

  it('decides nothing before that is said, and shows what the project washes to', () => {
    const { details, figures } = answerOf(coverSize, { ...start, acrossPercent: 5, alongPercent: 10 });
    expect(coverSize.decides!(details)).toEqual({});
    // 40 in square: 38 by 36 in.
    expect(figures[0]?.quantity).toMatchObject({
      width: { exact: inches(38) },
      length: { exact: inches(36) },
    });
  });

  it('lists mattresses and says what is not for a crib, but not for a table', () => {
    const said = (over: CoveredThing | null) => {
      const { tables, notes } = answerOf(coverSize, { ...start, over });
      return [tables.length, notes.some(({ says }) => says.includes('crib'))];
    };
    expect([null, bed(60, 80, 12)].map(said)).toEqual([
      [1, true],
      [1, true],
    ]);
    const table = { over: 'round', diameter: inches(30) } as const;
    expect(said(table)).toEqual([0, false]);
    const [, hole] = answerOf(coverSize, { ...start, over: table }).notes;
    expect(hole?.says).toContain(`“${holeSize.title}”`);
  });

  it('is never smaller for a longer drop', () => {
    fc.assert(
      fc.property(anyOver, anyLength(0, 30), anyLength(0, 30), (over, drop, more) => {
        const [less, larger] = [sizeOf({ over, drop }), sizeOf({ over, drop: lengthFromUnits(drop + more) })];
        expect(larger.makeWidth).toBeGreaterThanOrEqual(less.makeWidth);
        expect(larger.makeLength).toBeGreaterThanOrEqual(less.makeLength);
      }),
    );
  });
});

import Fraction from 'fraction.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestStart, clearanceAt } from '#core/calculators/binding/scrappy-binding/best-start';
import type { ScrappyBindingInput } from '#core/calculators/binding/scrappy-binding/input';
import { scrappyBinding } from '#core/calculators/binding/scrappy-binding/scrappy-binding';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';

const square = (side: number): Outline => ({ shape: 'square', side: inches(side) });
const starting = scrappyBinding.fromProject({
  outline: square(55),
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
});
/** Equal strips around an edge; the overlap is one join, so that the strip closes in a loop. */
const loop = (side: number, count: number, length: number): ScrappyBindingInput => ({
  ...starting,
  outline: square(side),
  strips: [{ length: inches(length), count }],
  overlap: starting.stripWidth,
});
const detailsOf = (input: ScrappyBindingInput) => answerOf(scrappyBinding, input).details;
const figureOf = (input: ScrappyBindingInput, named: string) =>
  answerOf(scrappyBinding, input).figures.find(({ label }) => label === named)?.quantity;

describe('strips of given lengths, joined', () => {
  // Common practice: a diagonal join costs one strip width. Two strips 3 by 10 give 17, two 5 by 7 give 9, two 1 1/2 by 20 give 38 1/2.
  it.each([
    [3, 10, 17],
    [5, 7, 9],
    [1.5, 20, 38.5],
  ])('two strips %d wide and %d long give %d', (width, length, gives) => {
    const input = { ...loop(55, 2, length), stripWidth: inches(width) };
    expect(detailsOf(input).given / UNITS_PER_INCH).toBeCloseTo(gives, 9);
  });

  // Derived: n strips of length l close in a loop around P when n(l - w) is at least P. Without joins counted, too few.
  it.each([
    [10, 30, 22],
    [18, 15, 13],
    [21, 12, 11],
  ])(
    'of %d in around 220 in, %d are enough, one fewer is not, and the %d of the plain rule are not',
    (length, least, plain) => {
      expect(detailsOf(loop(55, least, length)).missing).toBe(0);
      expect(detailsOf(loop(55, least - 1, length)).missing).toBeGreaterThan(0);
      expect(detailsOf(loop(55, plain, length)).missing).toBeGreaterThan(0);
    },
  );

  // Common practice: 220 in of edge and strips of 40 in: (50 + 60) · 2 ÷ (40 - 2) = 5.79, six strips.
  it('around 50 by 60 in take six strips of 40 in', () => {
    const outline: Outline = { shape: 'rectangle', width: inches(50), length: inches(60) };
    const six = { ...loop(55, 6, 40), outline, stripWidth: inches(2.25), overlap: inches(2.25) };
    expect(detailsOf(six).missing).toBe(0);
    expect(detailsOf({ ...six, strips: [{ length: inches(40), count: 5 }] }).missing).toBeGreaterThan(0);
  });

  // Derived: a fat quarter of 18 by 22 gives seven strips 2 1/2 wide: 154 end to end, 136 1/2 once closed in a loop.
  it('of a fat quarter reach around 136 1/2 in', () => {
    expect(starting.strips).toEqual([{ length: inches(22), count: 7 }]);
    const around = (side: number) => ({ ...loop(side, 7, 22) });
    expect(detailsOf(around(136.5 / 4)).spare).toBe(0);
    expect(detailsOf(around(136.5 / 4)).missing).toBe(0);
    expect(detailsOf(around(137 / 4)).missing).toBe(inches(1 / 2));
  });

  it('give what exact fractions give, whatever the lengths', () => {
    const anyStrips = fc.array(
      fc.record({
        length: fc.integer({ min: inches(3), max: inches(60) }).map(lengthFromUnits),
        count: fc.integer({ min: 1, max: 9 }),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(anyStrips, fc.constantFrom('diagonal', 'straight'), (strips, join) => {
        const { given, total, strips: count } = detailsOf({ ...starting, strips, join });
        const cost = new Fraction(join === 'diagonal' ? starting.stripWidth : 2 * starting.seamAllowance);
        let exact = new Fraction(0);
        let laid = 0;
        for (const strip of strips)
          for (let one = 0; one < strip.count; one += 1) {
            exact = exact.add(strip.length);
            laid += 1;
          }
        expect([total, count]).toEqual([Number(exact), laid]);
        expect(given).toBe(Number(exact.sub(cost.mul(laid - 1))));
      }),
    );
  });
});

describe('what is missing', () => {
  const short = { ...loop(55, 5, 22) };

  it('is cut from fabric in as few strips as reach, each with its join', () => {
    const details = detailsOf(short);
    // By hand: 5 · 22 - 4 · 2 1/2 = 100; 220 + 2 1/2 - 100 = 122 1/2; ÷ 39 1/2 = 3.1, four strips, 10 in of fabric.
    expect(details).toMatchObject({ missing: inches(122.5), more: 4, fabric: inches(10) });
    expect(figureOf(short, 'Missing')).toMatchObject({ rounded: inches(122.5) });
    const withMore = { ...short, strips: [...short.strips, { length: inches(42), count: 4 }] };
    expect(detailsOf(withMore).missing).toBe(0);
    const withThree = { ...short, strips: [...short.strips, { length: inches(42), count: 3 }] };
    expect(detailsOf(withThree).missing).toBeGreaterThan(0);
  });

  it('is what a need and a cutting plan ask for, and nothing is where the strips reach', () => {
    const details = detailsOf(short);
    expect(scrappyBinding.needs?.(short, details, inches(42))).toMatchObject([
      { amount: { measure: 'strips', needed: inches(125), cost: inches(2.5) } },
    ]);
    expect(scrappyBinding.cuts?.(short, details)).toMatchObject([
      { count: 4, length: inches(2.5), width: inches(42) },
    ]);
    const enough = loop(55, 12, 22);
    expect(scrappyBinding.needs?.(enough, detailsOf(enough), inches(42))).toEqual([]);
    expect(scrappyBinding.cuts?.(enough, detailsOf(enough))).toEqual([]);
  });

  it('never grows with another strip, and never asks for less fabric around a longer edge', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 100 }),
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 1, max: 20 }),
        (side, more, count) => {
          const [small, large] = [detailsOf(loop(side, count, 18)), detailsOf(loop(side + more, count, 18))];
          expect(large.missing).toBeGreaterThanOrEqual(small.missing);
          expect(large.fabricToBuy).toBeGreaterThanOrEqual(small.fabricToBuy);
          expect(detailsOf(loop(side, count + 1, 18)).missing).toBeLessThanOrEqual(small.missing);
          expect(small.missing === 0 || small.spare === 0).toBe(true);
          expect(small.given + small.missing - small.spare).toBeCloseTo(small.needed, 3);
        },
      ),
    );
  });
});

describe('where the joins come', () => {
  it('uses the strips in the order they are listed, and no more than are needed', () => {
    const strips = [10, 60, 30, 50, 40].map((length) => ({ length: inches(length), count: 1 }));
    const details = detailsOf({ ...loop(30, 1, 1), strips });
    // By hand, 122 1/2 in needed: 10, then 67 1/2, 95, 142 1/2: the fourth strip is the last.
    expect(details.used).toBe(4);
    const half = inches(1.25);
    expect(details.joins).toEqual([0, 7.5, 65, 92.5].map((along) => half + inches(along)));
  });

  it('keeps every join as far from the corners as trying each eighth of an inch finds', () => {
    const lengths = fc.array(fc.integer({ min: 4, max: 45 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(lengths, fc.integer({ min: 8, max: 40 }), (strips, side) => {
        const joins = strips.map((_, index) => strips.slice(0, index).reduce((sum, one) => sum + one, 0));
        const around = { perimeter: 4 * side, corners: [0, side, 2 * side, 3 * side], joins };
        const { start, clearance } = bestStart(around);
        expect(clearanceAt(start, around)).toBeCloseTo(clearance, 9);
        let tried = 0;
        for (let at = 0; at < side; at += 1 / 8) {
          const gaps = joins.map((join) => Math.min((at + join) % side, side - ((at + join) % side)));
          tried = Math.max(tried, Math.min(...gaps));
        }
        expect(clearance).toBeGreaterThanOrEqual(tried);
        expect(clearance - tried).toBeLessThanOrEqual(1 / 16 + 1e-9);
      }),
    );
  });

  it('names the side and how far past its corner, and warns where a miter has no room', () => {
    const roomy = answerOf(scrappyBinding, loop(55, 12, 22));
    expect(roomy.details.start?.clearance).toBeGreaterThanOrEqual(starting.stripWidth);
    expect(roomy.notes[0]).toMatchObject({ kind: 'tip', values: { side: { rounded: inches(55) } } });
    const crowded = answerOf(scrappyBinding, loop(12, 40, 4));
    expect(crowded.details.start?.clearance).toBeLessThan(starting.stripWidth);
    expect(crowded.notes[0]).toMatchObject({ kind: 'warning' });
    // One start lies on each side, at most a side past its corner.
    fc.assert(
      fc.property(anyOutline(10, 60), (outline) => {
        const { start, edge } = detailsOf({ ...loop(1, 100, 20), outline });
        if (start === null) return;
        expect(start.past).toBeGreaterThanOrEqual(0);
        expect(start.past).toBeLessThanOrEqual(start.side + starting.cutStep);
        expect(start.along).toBeLessThanOrEqual(edge + starting.cutStep);
      }),
    );
  });

  it('draws a dot at every join, and asks for bias where the edge is curved and has no corners', () => {
    const round = answerOf(scrappyBinding, {
      ...loop(55, 12, 22),
      outline: { shape: 'circle', diameter: inches(50) },
    });
    expect(round.details.start).toBeNull();
    expect(round.notes[0]?.says).toMatch(/bias/);
    const dots = round.diagram?.parts.filter(
      ({ part, tone }: { part: string; tone?: string }) => part === 'circle' && tone === 'seam',
    );
    expect(dots).toHaveLength(round.details.used);
    for (const dot of dots ?? [])
      if (dot.part === 'circle')
        expect(Math.hypot(dot.center.x - inches(25), dot.center.y - inches(25)) / inches(25)).toBeCloseTo(
          1,
          2,
        );
  });
});

describe('what it refuses', () => {
  it('is a strip no longer than a join, and fabric whose strips add nothing where some is missing', () => {
    const tiny = { ...starting, strips: [...starting.strips, { length: inches(2.5), count: 1 }] };
    expect(refusalOf(scrappyBinding, tiny)).toMatchObject({
      code: 'strip-too-short',
      field: ['strips', 1, 'length'],
    });
    const narrow = { ...starting, stripWidth: inches(5), fabricWidth: inches(5) };
    expect(refusalOf(scrappyBinding, narrow)).toMatchObject({
      code: 'strips-too-short',
      field: ['fabricWidth'],
    });
    const endless = {
      ...starting,
      strips: Array.from({ length: 8 }, () => ({ length: inches(350), count: 100 })),
    };
    expect(refusalOf(scrappyBinding, endless)).toMatchObject({ code: 'too-much-strip', field: ['strips'] });
    expect(detailsOf({ ...narrow, outline: square(2) }).missing).toBe(0);
  });
});

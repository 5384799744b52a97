import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PipingInput } from '#core/calculators/edge-finish/piping/input';
import { piping } from '#core/calculators/edge-finish/piping/piping';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { type Length, lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const square = (side: number): Outline => ({ shape: 'square', side: inches(side) });
const circle = (diameter: number): Outline => ({ shape: 'circle', diameter: inches(diameter) });
const starting = (outline: Outline, change: Partial<PipingInput> = {}): PipingInput => ({
  ...piping.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
  ...change,
});
const detailsOf = (outline: Outline, change: Partial<PipingInput> = {}) =>
  answerOf(piping, starting(outline, change)).details;
const none = lengthFromUnits(0);
const anyInches = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: inches(least), max: inches(most) }).map(lengthFromUnits);

describe('the strip for a cord', () => {
  // Common practice: once around the cord and two seam allowances: 1/2 in around, seams of 1/2 in, 1 1/2 in.
  it('is once around it and two seam allowances', () => {
    const cord = lengthFromUnits(Math.floor(inches(1 / 2) / Math.PI));
    const change = { cord, seamAllowance: inches(1 / 2), cutStep: lengthFromUnits(320) };
    expect(detailsOf(square(40), change).strip / UNITS_PER_INCH).toBeCloseTo(1.5, 1);
  });

  // Derived: with seams of 1/4 in, π · d + 1/2, rounded up to an eighth.
  it.each([
    [1 / 8, 1],
    [5 / 32, 1],
    [3 / 16, 1.125],
    [1 / 4, 1.375],
  ])('of %d in with seams of 1/4 in is %d in', (cord, strip) => {
    expect(detailsOf(square(40), { cord: inches(cord) }).strip).toBe(inches(strip));
  });
});

describe('the fabric', () => {
  // Known slip: 950 in of cord, fabric of 54 in, strips of 1 1/2: a page cuts 18, 27 in, and counts 972 in by area. Derived: each of
  // the 17 joins takes a strip width, so 18 strips give 946 1/2 in and it takes 19.
  it('for 950 in of cord from strips of 1 1/2 in is nineteen of them, not eighteen', () => {
    const cord = lengthFromUnits(Math.floor(inches(1) / Math.PI));
    const change = { cord, fabricWidth: inches(54), extra: none, cutStep: inches(1 / 2) };
    const details = detailsOf(square(950 / 4), change);
    expect(details.strip).toBe(inches(1.5));
    expect(details.straight?.strips).toBe(19);
    expect(18 * 54 - 17 * 1.5).toBeLessThan(950);
  });

  it('on the straight grain is as few strips as reach, laid one after the other', () => {
    fc.assert(
      fc.property(anyInches(10, 120), (side) => {
        const { straight, strip, needed, fabric } = detailsOf({ shape: 'square', side });
        const laid = (count: number) => count * inches(42) - (count - 1) * strip;
        expect(laid(straight!.strips)).toBeGreaterThanOrEqual(needed);
        if (straight!.strips > 1) expect(laid(straight!.strips - 1)).toBeLessThan(needed);
        expect(fabric).toBe(straight!.strips * strip);
      }),
    );
  });

  it('on the bias gives the whole strip, and never shrinks on a larger circle or for a thicker cord', () => {
    fc.assert(
      fc.property(anyInches(10, 60), anyInches(0, 20), (diameter, more) => {
        const one = detailsOf({ shape: 'circle', diameter });
        expect(one.bias!.gives).toBeGreaterThanOrEqual(one.needed);
        const larger = detailsOf({ shape: 'circle', diameter: lengthFromUnits(diameter + more) });
        expect(larger.fabric).toBeGreaterThanOrEqual(one.fabric);
        const thicker = detailsOf({ shape: 'circle', diameter }, { cord: inches(1) });
        expect(thicker.strip).toBeGreaterThanOrEqual(one.strip);
      }),
    );
  });

  it('is one value on the shopping list, in the cutting plan and in the figures', () => {
    fc.assert(
      fc.property(anyInches(10, 90), fc.constantFrom('bias', 'straight'), (side, grain) => {
        const input = starting({ shape: 'square', side }, { grain, safetyExtra: 0 });
        const { details, figures } = answerOf(piping, input);
        const [need] = piping.needs!(input, details, inches(42));
        expect(lengthFor(need!.amount, { width: inches(42), turning: 'any' })).toBe(details.fabric);
        const cuts = piping.cuts!(input, details);
        expect(cuts.reduce((sum, { length, count }) => sum + length * count, 0)).toBe(details.fabric);
        expect(figures[2]?.quantity).toMatchObject({ exact: details.fabric, rounded: details.fabricToBuy });
      }),
    );
  });
});

describe('the cord', () => {
  // Derived: around 40 in square 160 in, and 4 in to join the ends.
  it('is on the shopping list as a notion, as long as the strip', () => {
    const input = starting(square(40));
    const { details, figures } = answerOf(piping, input);
    const cord = piping.needs!(input, details, inches(42)).find(({ kind }) => kind === 'notions');
    expect(cord).toMatchObject({ extraPercent: 0, amount: { measure: 'notion', length: inches(164) } });
    const toBuy = figures.find(({ label }) => label === 'Cord to buy');
    // 164 in are 36 1/2 eighths of a yard.
    expect(toBuy?.quantity).toMatchObject({ exact: inches(164), rounded: inches(37 * 4.5) });
  });

  it('is bought whatever way the strip is cut, and as much as the figure says', () => {
    fc.assert(
      fc.property(anyInches(10, 90), fc.constantFrom('bias', 'straight'), (diameter, grain) => {
        const input = starting({ shape: 'square', side: diameter }, { grain });
        const { details } = answerOf(piping, input);
        const cords = piping.needs!(input, details, inches(42)).filter(({ kind }) => kind === 'notions');
        expect(cords.map(({ amount }) => amount)).toEqual([{ measure: 'notion', length: details.needed }]);
      }),
    );
  });
});

describe('a bend', () => {
  it('opens its clips by what the cut edges are longer, counted over the whole circle', () => {
    fc.assert(
      fc.property(anyInches(6, 60), anyInches(1 / 4, 2), (diameter, clipEvery) => {
        const { bend, edge } = detailsOf({ shape: 'circle', diameter }, { clipEvery });
        const cutEdge = Math.PI * (diameter + 2 * inches(1 / 4));
        expect(bend!.clips * bend!.opening).toBeCloseTo(cutEdge - edge, 3);
      }),
    );
  });

  it('of a hole overlaps by what its cut edge is shorter, and is sewn a seam outside of that', () => {
    fc.assert(
      fc.property(anyInches(3, 20), (diameter) => {
        const change = { hole: { diameter }, around: 'hole', grain: 'bias' } as const;
        const { bend, edge } = detailsOf(square(40), change);
        expect(edge).toBeCloseTo(Math.PI * (diameter + 2 * inches(1 / 4)), 6);
        expect(bend!.clips * bend!.opening).toBeCloseTo(edge - Math.PI * diameter, 3);
      }),
    );
  });

  it('of rounded corners is a full circle of their radius, and straight sides have none', () => {
    const rounded: Outline = {
      shape: 'rounded',
      width: inches(40),
      length: inches(50),
      cornerRadius: inches(4),
    };
    expect(detailsOf(rounded).bend?.length).toBeCloseTo(2 * Math.PI * inches(4), 6);
    expect(detailsOf(square(40)).bend).toBeNull();
  });

  it('starts on the bias, and is refused on the straight grain, too tight, or where no fabric reaches', () => {
    expect(starting(circle(40)).grain).toBe('bias');
    expect(starting(square(40)).grain).toBe('straight');
    const refused = (outline: Outline, change: Partial<PipingInput>) =>
      refusalOf(piping, starting(outline, change));
    expect(refused(circle(40), { grain: 'straight' })).toMatchObject({
      code: 'needs-bias',
      field: ['grain'],
    });
    expect(refused(circle(2), { cord: inches(1) })).toMatchObject({
      code: 'bend-too-tight',
      field: ['cord'],
    });
    const wide = { cord: inches(2), fabricWidth: inches(4) };
    expect(refused(square(40), wide)).toMatchObject({ code: 'no-fabric', field: ['fabricWidth'] });
    expect(piping.input.safeParse(starting(square(40), { around: 'hole' })).success).toBe(false);
  });

  it('says where to clip: on a bend, around a hole, at corners', () => {
    const says = (input: PipingInput) => answerOf(piping, input).notes[0];
    expect(says(starting(circle(40)))).toMatchObject({ values: { every: { rounded: inches(1 / 2) } } });
    const hole = { hole: { diameter: inches(6) }, around: 'hole', grain: 'bias' } as const;
    expect(says(starting(square(40), hole))?.says).toMatch(/notch/);
    expect(says(starting(square(40)))).toMatchObject({ values: { corners: { rounded: 4 } } });
    const sides = [inches(20), inches(22), inches(21)];
    const sketch: Outline = { shape: 'sides', sides, width: inches(22), length: inches(18) };
    expect(says(starting(sketch))?.says).toMatch(/every corner/);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { facing } from '#core/calculators/edge-finish/facing/facing';
import type { FacingInput } from '#core/calculators/edge-finish/facing/input';
import type { Hole, Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { type Length, lengthFromInches as inches, lengthFromUnits } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const square = (side: number): Outline => ({ shape: 'square', side: inches(side) });
const circle = (diameter: number): Outline => ({ shape: 'circle', diameter: inches(diameter) });
const hole = (diameter: number): Hole => ({ diameter: inches(diameter) });
const starting = (outline: Outline, own: Hole | null, change: Partial<FacingInput> = {}): FacingInput => ({
  ...facing.fromProject({ outline, hole: own, hasSlit: false, settings: STARTING_SETTINGS }),
  ...change,
});
const detailsOf = (outline: Outline, own: Hole | null, change: Partial<FacingInput> = {}) =>
  answerOf(facing, starting(outline, own, change)).details;
const anyInches = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: inches(least), max: inches(most) }).map(lengthFromUnits);

describe('a shaped facing for a hole', () => {
  // Derived: a hole of 6 1/2 in, seam 1/4, facing 1 1/2, turned edge 1/4: 2 · (3 1/4 + 1/4 + 1 1/2 + 1/4) = 10 1/2 in.
  it('takes one patch from the middle of the hole to its own outer edge on both sides', () => {
    const { patch, fabric, line } = detailsOf(circle(48), hole(6.5));
    expect(patch).toEqual({ width: inches(10.5), length: inches(10.5) });
    expect(fabric).toBe(inches(10.5));
    expect(line).toBeCloseTo(Math.PI * inches(7), 6);
  });

  it('opens as wide as its stitching, a seam more than the cut on either side', () => {
    const { figures } = answerOf(facing, starting(circle(48), hole(6.5)));
    expect(figures.find(({ label }) => label === 'Opening, across')?.quantity).toMatchObject({
      rounded: inches(7),
    });
  });

  it('bends nowhere, so there is no verdict', () => {
    expect(detailsOf(circle(48), hole(3)).give).toBeNull();
  });

  it('grows with hole, width, seam and turned edge', () => {
    const any = fc.record({
      d: anyInches(2, 20),
      w: anyInches(1, 5),
      s: anyInches(1 / 8, 1),
      e: anyInches(0, 1),
    });
    fc.assert(
      fc.property(any, any, (one, more) => {
        const side = ({ d, w, s, e }: typeof one) =>
          detailsOf(
            circle(60),
            { diameter: d },
            { width: w, seamAllowance: s, turnedEdge: e, fabricWidth: inches(100) },
          ).patch!.width;
        const added = (a: Length, b: Length) => lengthFromUnits(a + b);
        const larger = {
          d: added(one.d, more.d),
          w: added(one.w, more.w),
          s: one.s,
          e: added(one.e, more.e),
        };
        expect(side(larger)).toBeGreaterThanOrEqual(side(one));
      }),
    );
  });

  it('is refused where its patch is wider than the fabric', () => {
    const refusal = refusalOf(facing, starting(circle(60), null, { around: 'outside', way: 'shaped' }));
    expect(refusal).toMatchObject({ code: 'no-fabric', field: ['way'] });
  });
});

describe('a clip', () => {
  // The cut edge is s inside the stitching and, once turned, s outside it: a whole circle is longer by 2π · 2s.
  it('opens so far that all clips together make up for turning the seam to the back', () => {
    fc.assert(
      fc.property(
        anyInches(2, 20),
        anyInches(1 / 8, 1 / 2),
        anyInches(1 / 4, 2),
        (diameter, seamAllowance, clipEvery) => {
          const { curve } = detailsOf(square(60), { diameter }, { seamAllowance, clipEvery });
          expect(curve!.clips * curve!.opening).toBeCloseTo(4 * Math.PI * seamAllowance, 3);
        },
      ),
    );
  });

  it('is not needed along straight sides', () => {
    expect(detailsOf(square(40), null).curve).toBeNull();
    expect(detailsOf({ shape: 'hexagon', acrossFlats: inches(40) }, null).curve).toBeNull();
  });
});

describe('the steps', () => {
  it('trim corners where there are some', () => {
    const steps = (outline: Outline) => JSON.stringify(answerOf(facing, starting(outline, null)).tables);
    const rounded = {
      shape: 'rounded',
      width: inches(40),
      length: inches(50),
      cornerRadius: inches(6),
    } as const;
    expect(steps(square(40))).toContain('Trim across the corners');
    expect([circle(40), rounded].map(steps).join('')).not.toContain('Trim across the corners');
  });
});

describe('strips for a facing', () => {
  // By hand: 40 in square, 1 1/2 + 1/4 + 1/4 = 2 in wide; 160 + 8 · 1 = 168 in. Four strips of 42 in less three joins of 2 in reach
  // 162 in, five reach 202: five strips, 10 in of fabric.
  it('of a square are one for each side, with extra at both ends', () => {
    const { strips, fabric, give } = detailsOf(square(40), null);
    expect(strips).toMatchObject({
      strip: inches(2),
      needed: inches(168),
      straight: { strips: 5 },
      bias: null,
    });
    expect(fabric).toBe(inches(10));
    expect(give).toBeNull();
  });

  it('of a curve are cut on the bias, and give what their sewn edge is away from the stitching', () => {
    const { strips, give } = detailsOf(circle(40), null);
    expect(strips!.bias!.gives).toBeGreaterThanOrEqual(strips!.needed);
    expect(strips!.needed).toBeCloseTo(Math.PI * inches(40) + inches(4), 6);
    // 1 in at a radius of 20 in.
    expect(give!.share).toBeCloseTo(1 / 20, 9);
    expect(give!.verdict).toBe('comfortable');
  });

  // Whatever their fabric has room for, no more are cut than reach: without the shortest of them the rest is too short.
  it('of a curve are the fewest that reach', () => {
    fc.assert(
      fc.property(anyInches(5, 60), (diameter) => {
        const { bias, needed, strip } = detailsOf({ shape: 'circle', diameter }, null).strips!;
        const middles = bias!.strips.map(({ middle }) => middle);
        const join = 2 * inches(1 / 4) * Math.SQRT2;
        const sewn = (lengths: readonly number[]) =>
          lengths.reduce((sum, one) => sum + one, 0) - (lengths.length - 1) * join - strip;
        expect(bias!.gives).toBeCloseTo(sewn(middles), 3);
        expect(sewn(middles)).toBeGreaterThanOrEqual(needed - 1e-3);
        if (middles.length > 1) expect(sewn(middles.slice(0, -1))).toBeLessThan(needed);
      }),
    );
  });

  it('around a small hole are too wide, and the way out is narrower or shaped', () => {
    const { details, notes } = answerOf(
      facing,
      starting(square(40), hole(6), { way: 'strips', width: inches(1.5) }),
    );
    // 1 1/2 in at a radius of 3 1/4 in is 46%.
    expect(details.give?.verdict).toBe('too tight');
    const warning = notes.find(({ kind }) => kind === 'warning');
    expect(warning?.says).toContain('or cut it shaped');
    // 16% of 3 1/4 in.
    expect(warning?.values['widest']).toMatchObject({ exact: 0.16 * inches(3.25) });
  });

  it('reach past the middle of no bend', () => {
    const refusal = refusalOf(
      facing,
      starting(circle(2.25), null, { width: inches(1), turnedEdge: inches(1 / 4) }),
    );
    expect(refusal).toMatchObject({ code: 'bend-too-tight', field: ['width'] });
  });
});

describe('the fabric for a facing', () => {
  it('is one value on the shopping list and in the figures, whatever the way', () => {
    const input = fc.record({
      side: anyInches(8, 40),
      other: anyInches(8, 40),
      way: fc.constantFrom('shaped', 'strips'),
      isRound: fc.boolean(),
      isHole: fc.boolean(),
    });
    fc.assert(
      fc.property(input, ({ side, other, way, isRound, isHole }) => {
        const outline: Outline = isRound
          ? { shape: 'circle', diameter: side }
          : { shape: 'rectangle', width: side, length: other };
        const asked = starting(outline, hole(4), {
          way,
          around: isHole ? 'hole' : 'outside',
          safetyExtra: 0,
        });
        const { details } = answerOf(facing, asked);
        const [need] = facing.needs!(asked, details, inches(42));
        expect(lengthFor(need!.amount, { width: inches(42), turning: 'any' })).toBe(details.fabric);
      }),
    );
  });

  it('is cut after the edge, so no cutting plan asks for it by itself', () => {
    expect(facing.isCutLater).toBe(true);
  });
});

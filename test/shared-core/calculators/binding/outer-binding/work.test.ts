import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outerBinding } from '#core/calculators/binding/outer-binding/outer-binding';
import type { OuterBindingInput } from '#core/calculators/binding/outer-binding/input';
import { planOuterBinding } from '#core/calculators/binding/outer-binding/work';
import { innerBinding } from '#core/calculators/curves/inner-binding/inner-binding';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { answerOf } from '#test/helpers/answer-of';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';

const square = (side: number): Outline => ({ shape: 'square', side: inches(side) });
const circle = (diameter: number): Outline => ({ shape: 'circle', diameter: inches(diameter) });

const own = { quiltThickness: inches(1 / 8), backCover: inches(1 / 8), seamAllowance: inches(1 / 4) };

function asked(outline: Outline, change: Partial<OuterBindingInput> = {}): OuterBindingInput {
  const start = outerBinding.fromProject({
    outline,
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  });
  return { ...start, ...change };
}

function plan(outline: Outline, change: Partial<OuterBindingInput> = {}) {
  const planned = planOuterBinding(asked(outline, change));
  if (!planned.ok) throw new Error(planned.error.code);
  return planned.value;
}

describe('what the strip has to reach', () => {
  it('is the edge, both sides of a slit that is bound with the outside, every inner corner, and the overlap', () => {
    const change = {
      hole: { diameter: inches(6) },
      hasSlit: true,
      slitBoundWith: 'outside',
      innerCorners: 3,
      innerCornerAngle: 300,
      overlap: inches(9),
    } as const;
    const { edge, slit, cornerExtra, needed } = plan(square(40), change);
    expect([slit, edge]).toEqual([inches(17), inches(160 + 34)]);
    // Each inner corner of 300° takes 2s · tan 60° more (derived).
    expect(cornerExtra / UNITS_PER_INCH).toBeCloseTo(3 * 0.5 * Math.sqrt(3), 9);
    expect(needed).toBeCloseTo(edge + cornerExtra + inches(9), 6);
  });

  it('goes around the hole too where one strip binds outside, slit and hole, along its seam line (derived)', () => {
    const change = {
      hole: { diameter: inches(6) },
      hasSlit: true,
      slitBoundWith: 'outside-and-hole',
    } as const;
    const { edge, slit, hole, isBiasNeeded, bend } = plan(square(40), { ...own, ...change });
    expect(hole / UNITS_PER_INCH).toBeCloseTo(Math.PI * 6.5, 9);
    expect([slit, edge - hole]).toEqual([inches(17), inches(160 + 34)]);
    // Straight sides take straight grain, but the strip that goes around the hole is cut on the bias (common practice).
    expect(isBiasNeeded).toBe(true);
    expect(plan(square(40), { ...own, ...change, slitBoundWith: 'outside' }).isBiasNeeded).toBe(false);
    // The fold reaches 3/8 in past the seam, on a seam line of 3 1/4 in radius (derived).
    expect(bend).toMatchObject({ side: 'inside', radius: inches(3) });
    expect(bend?.strain).toBeCloseTo(0.375 / 3.25, 9);
  });

  it('in one strip is as much as the outside, the slit and the inner binding of the same hole', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 120 }), fc.integer({ min: 3, max: 15 }), (across, hole) => {
        const change = { hole: { diameter: inches(hole) }, hasSlit: true } as const;
        const withSlit = plan(circle(across), { ...change, slitBoundWith: 'outside' });
        const inOne = plan(circle(across), { ...change, slitBoundWith: 'outside-and-hole' });
        const start = innerBinding.fromProject({
          outline: circle(across),
          hole: { diameter: inches(hole) },
          hasSlit: false,
          settings: STARTING_SETTINGS,
        });
        const { seamLine } = answerOf(innerBinding, start).details;
        expect(inOne.needed - withSlit.needed).toBeCloseTo(seamLine, 3);
      }),
    );
  });

  // A walk in short steps: around the outside, in along the slit, around the seam line of the hole, and out again.
  it('in one strip is as long as a walk along it, with the overlap', () => {
    const around = (radius: number) => {
      const steps = 20_000;
      const chord = Math.hypot(
        radius * (1 - Math.cos((2 * Math.PI) / steps)),
        radius * Math.sin((2 * Math.PI) / steps),
      );
      return steps * chord;
    };
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 120 }), fc.integer({ min: 3, max: 15 }), (across, hole) => {
        const walked = around(across / 2) + (across - hole) + around(hole / 2 + 1 / 4);
        const change = {
          ...own,
          hole: { diameter: inches(hole) },
          hasSlit: true,
          overlap: inches(10),
        } as const;
        const { needed } = plan(circle(across), { ...change, slitBoundWith: 'outside-and-hole' });
        expect(needed / UNITS_PER_INCH).toBeCloseTo(walked + 10, 4);
      }),
    );
  });

  it('follows the stages: one strip where no stage binds the hole by itself, as the usual plan has it', () => {
    const start = (isHoleBoundAlone?: boolean) =>
      outerBinding.fromProject({
        outline: circle(50),
        hole: { diameter: inches(6) },
        hasSlit: true,
        settings: STARTING_SETTINGS,
        ...(isHoleBoundAlone === undefined ? {} : { isHoleBoundAlone }),
      }).slitBoundWith;
    expect([start(false), start(true), start()]).toEqual(['outside-and-hole', 'hole', 'hole']);
  });

  it('does not count a slit that is not cut, is bound with the hole, or has no hole', () => {
    const hole = { diameter: inches(6) };
    const slits: readonly Partial<OuterBindingInput>[] = [
      { hole, hasSlit: false, slitBoundWith: 'outside' },
      { hole, hasSlit: false, slitBoundWith: 'outside-and-hole' },
      { hole, hasSlit: true, slitBoundWith: 'hole' },
      { hole: null, hasSlit: true, slitBoundWith: 'outside' },
    ];
    for (const change of slits)
      expect(plan(square(40), change)).toMatchObject({ slit: 0, edge: inches(160) });
  });
});

describe('what the strip gives', () => {
  it('of 2½ in, folded double: fits a front of 1/3 in with 3/8 in of cover; 2 in would be enough (derived)', () => {
    const { frontWidth, cover, stripForSeam } = plan(square(40), { ...own, stripWidth: inches(2.5) });
    expect(frontWidth / UNITS_PER_INCH).toBeCloseTo(1 / 3, 9);
    expect([cover, stripForSeam]).toEqual([inches(3 / 8), inches(2)]);
  });

  it('of 1½ in, folded once: fits a front of 5/16 in with 3/8 in of cover; 1¼ in would be enough (derived)', () => {
    const single = plan(square(40), { ...own, fold: 'single', stripWidth: inches(1.5) });
    expect([single.frontWidth, single.cover, single.stripForSeam]).toEqual(
      [5 / 16, 3 / 8, 5 / 4].map(inches),
    );
  });

  it('takes a strip width of fabric for every strip, plus the safety extra', () => {
    const bought = plan(square(40), { safetyExtra: 0, yardageStep: lengthFromUnits(1) });
    expect(bought.fabric).toBe(bought.strips * inches(2.5));
    expect(bought.fabricToBuy).toBe(bought.fabric);
    const quarterMore = plan(square(40), { safetyExtra: 25, yardageStep: lengthFromUnits(1) });
    expect(quarterMore.fabricToBuy).toBe((5 / 4) * bought.fabric);
  });

  it('is never less for a larger quilt, and straight joins take no more strips', () => {
    const side = fc.integer({ min: 4, max: 120 });
    fc.assert(
      fc.property(side, fc.integer({ min: 0, max: 40 }), (across, more) => {
        const [small, large] = [plan(square(across)), plan(square(across + more))];
        expect(large.needed).toBeGreaterThanOrEqual(small.needed);
        expect(large.strips).toBeGreaterThanOrEqual(small.strips);
        expect(large.fabricToBuy).toBeGreaterThanOrEqual(small.fabricToBuy);
        expect(plan(square(across), { join: 'straight' }).strips).toBeLessThanOrEqual(small.strips);
      }),
      { numRuns: 20 },
    );
  });
});

describe('the bend', () => {
  it('is judged once the strip is turned: by what it leaves past the stitching, or by the seam at the edge', () => {
    const strain = (change: Partial<OuterBindingInput>) => 100 * plan(circle(20.5), change).bend!.strain;
    // Stitching 10 in from the middle: 2 1/2 in leaves 3/8 in past it in double fold, 1 3/8 in single; 1 3/4 in leaves 0 (derived).
    expect(strain({ ...own, stripWidth: inches(2.5) })).toBeCloseTo(3.75, 9);
    expect(strain({ ...own, stripWidth: inches(2.5), fold: 'single' })).toBeCloseTo(13.75, 9);
    expect(strain({ ...own, stripWidth: inches(1.75) })).toBeCloseTo(2.5, 9);
  });

  it('needs bias if there is one, also where only the corners are rounded (common practice)', () => {
    expect(plan(circle(150)).isBiasNeeded).toBe(true);
    const rounded: Outline = {
      ...{ shape: 'rounded', width: inches(60), length: inches(72), cornerRadius: inches(4) },
    };
    expect(plan(rounded)).toMatchObject({ isBiasNeeded: true, biasWay: { way: 'continuous-bias' } });
    expect(plan(rounded).bend?.radius).toBe(inches(4));
    expect(plan(square(10)).isBiasNeeded).toBe(false);
  });
});

it('goes up to a thousand strips and no further', () => {
  // Strips of 4 in with joins of 3 in gain 1 in each: a thousand reach 1003 in, of which 3 in are overlap.
  const strips = { fabricWidth: inches(4), stripWidth: inches(3), overlap: inches(3) };
  expect(plan(square(250), strips).strips).toBe(1_000);
  const one = planOuterBinding(asked(square(250.25), strips));
  expect(one).toMatchObject({ ok: false, error: { code: 'strips-too-short', field: ['fabricWidth'] } });
});

it('accepts any hole that leaves some of the quilt', () => {
  const hole = (diameter: number) =>
    planOuterBinding(asked(square(10), { hole: { diameter: inches(diameter) } }));
  expect(hole(9.99).ok).toBe(true);
  expect(hole(10)).toMatchObject({
    ok: false,
    error: { code: 'hole-too-wide', field: ['hole', 'diameter'] },
  });
});

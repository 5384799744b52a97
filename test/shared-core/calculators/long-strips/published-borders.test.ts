import { describe, expect, it } from 'vitest';
import type { LongStripsInput } from '#core/calculators/long-strips/input';
import { longStrips } from '#core/calculators/long-strips/long-strips';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_YARD } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';

const measurements = {
  outline: { shape: 'rectangle', width: inches(78), length: inches(88) },
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
} as const;

/** Strips cut to these sizes and sewn end to end with hardly a seam, as pages count them. */
const endToEnd = (lengths: readonly number[], cutWidth: number, fabric: number) => {
  const seam = lengthFromUnits(1);
  const input: LongStripsInput = {
    ...longStrips.fromProject(measurements),
    strips: { of: 'strips', list: lengths.map((length) => ({ length: inches(length), count: 1 })) },
    stripWidth: lengthFromUnits(inches(cutWidth) - 2 * seam),
    seamAllowance: seam,
    extraLength: lengthFromUnits(0),
    fabricWidth: inches(fabric),
    join: 'straight',
    safetyExtra: 0,
    cutStep: lengthFromUnits(1),
  };
  return answerOf(longStrips, input).details.across!;
};

describe('borders and strips against figures in print', () => {
  // Common practice: 56 by 61 in from 37 in of fabric 42 in wide: a border of 5 in takes 234 + 20 = 254 in, seven strips, 35 in. The widest
  // that works is 37/7 = 5.28 in; at 6 in the six strips that fit give 252 of 258 in.
  it.each([
    [5, 7, true],
    [37 / 7 - 0.01, 7, true],
    [6, 7, false],
  ])('a border of %f in around 56 by 61 in takes %d strips, and whether 37 in are enough: %s', (...one) => {
    const [width, strips, isEnough] = one;
    const corner = 4 * width;
    const across = endToEnd([56, 56, 61, 61 + corner], width, 42);
    expect(across.strips).toBe(strips);
    expect(across.fabric <= inches(37)).toBe(isEnough);
  });

  // Published: PAP, 70 by 80 in are 78 by 88 in after a border of 4 in.
  it('a border of 4 in is what 78 by 88 in have more than 70 by 80', () => {
    const { strips, stripWidth } = longStrips.fromProject(measurements);
    expect(stripWidth).toBe(inches(4));
    expect(strips).toMatchObject({ of: 'border', topWidth: inches(70), topLength: inches(80) });
  });

  // Published: EHO-B, a bed skirt with two sides of 76 in, one end of 60 and 2 · 18 + 2 in, 250 in. Known slip: the sum it prints comes to
  // 190 in, which is five widths. Its six widths of 20 1/2 in are 123 in, 3 1/2 yd.
  it.each([
    [250, 6],
    [252, 6],
    [190, 5],
  ])('%d in of a skirt 20 1/2 in deep take %d widths of 45 in', (length, widths) => {
    const across = endToEnd([length], 20.5, 45);
    expect(across).toMatchObject({ strips: widths, fabric: widths * inches(20.5) });
    if (widths === 6) expect(Math.ceil((across.fabric / UNITS_PER_YARD) * 8) / 8).toBe(3.5);
  });
});

describe('sashing all around', () => {
  // Common practice, the formula derived: n by m blocks have (n + 1)(m + 1) cornerstones and (n + 1)m + (m + 1)n strips.
  it.each([
    [4, 5, 30, 49],
    [1, 1, 4, 4],
    [7, 3, 32, 52],
  ])('%d by %d blocks have %d cornerstones and %d strips', (across, down, cornerstones, strips) => {
    const unit = {
      unit: 'sashing',
      blockWidth: inches(9),
      blockLength: inches(9),
      across,
      down,
      sashing: inches(2),
      cornerstones: true,
      outside: true,
    } as const;
    const cuts = patchSize.cuts!(
      { ...patchSize.fromProject(measurements), unit, count: 1 },
      answerOf(patchSize, { ...patchSize.fromProject(measurements), unit, count: 1 }).details,
    );
    const counts = cuts.map(({ count }) => count);
    expect(counts).toContain(cornerstones);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(cornerstones + strips);
  });
});

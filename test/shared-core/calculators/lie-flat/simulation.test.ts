import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneRise, waveHeight } from '#core/calculators/lie-flat/cone';
import type { LieFlatInput } from '#core/calculators/lie-flat/input';
import { lieFlat } from '#core/calculators/lie-flat/lie-flat';
import { workOutLieFlat } from '#core/calculators/lie-flat/work';
import { lengthFromUnits } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { gapOfHalf, sewnAngle, sewnTip, type SewnWedge } from './sewn-wedges';

const plain = lieFlat.fromProject(SAMPLE_MEASUREMENTS);

/** Rings of a usual size, seams a little off and tapering either way, wedges cut a little off. */
const anyRing = fc
  .record({
    wedges: fc.integer({ min: 6, max: 48 }),
    inner: fc.integer({ min: 16_000, max: 40_000 }),
    width: fc.integer({ min: 80_000, max: 240_000 }),
    innerOff: fc.integer({ min: -250, max: 250 }),
    outerOff: fc.integer({ min: -250, max: 250 }),
    legOff: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  })
  .map(({ wedges, inner, width, innerOff, outerOff, legOff }): LieFlatInput => ({
    ...plain,
    wedges,
    innerRadius: lengthFromUnits(inner),
    outerRadius: lengthFromUnits(inner + width),
    seamAllowance: lengthFromUnits(2_032),
    seamInner: lengthFromUnits(2_032 + innerOff),
    seamOuter: lengthFromUnits(2_032 + outerOff),
    cutWedge: { known: 'angle', angle: 360 / wedges + 2 * legOff },
  }));

function wedgeOf(input: LieFlatInput, angle: number): SewnWedge {
  return { angle, inner: input.innerRadius, outer: input.outerRadius, seam: input.seamAllowance };
}

const seamOf = ({ seamInner, seamOuter }: LieFlatInput) => ({ inner: seamInner, outer: seamOuter });
const rightWedge = (input: LieFlatInput) => wedgeOf(input, (2 * Math.PI) / input.wedges);

describe('wedges sewn on the table, line by line', () => {
  it('lose the angle that the answer says, and meet where it says', () => {
    fc.assert(
      fc.property(anyRing, (input) => {
        const work = workOutLieFlat({ ...input, cutWedge: { known: 'right' } });
        const left = sewnAngle(rightWedge(input), seamOf(input));
        expect(work.missing).toBeCloseTo(2 * Math.PI - input.wedges * left, 9);
        expect(work.movedIn).toBeCloseTo(sewnTip(rightWedge(input), seamOf(input)), 4);
      }),
      { numRuns: 300 },
    );
  });

  it('leave the gap at the line that the answer foretells', () => {
    fc.assert(
      fc.property(anyRing, (input) => {
        fc.pre(input.wedges % 2 === 0);
        const work = workOutLieFlat(input);
        const half = Array.from({ length: work.halfWedges }, () => wedgeOf(input, work.wedgeAngle));
        const foretold = work.legEnd * Math.sin(work.halfExpected);
        const found = gapOfHalf(half, seamOf(input));
        expect(Math.abs(found - foretold)).toBeLessThan(0.08 * Math.abs(found) + 80);
      }),
      { numRuns: 300 },
    );
  });

  it('lie on the line once every seam, or one wedge, is corrected as the answer says', () => {
    fc.assert(
      fc.property(anyRing, (drawn) => {
        const { halfWedges, wedgeAngle } = workOutLieFlat(drawn);
        fc.pre(drawn.wedges % 2 === 0);
        const half = Array.from({ length: halfWedges }, () => wedgeOf(drawn, wedgeAngle));
        const gap = gapOfHalf(half, seamOf(drawn));
        fc.pre(Math.abs(gap) > 500);
        const found = gap > 0 ? ('gap' as const) : ('overlap' as const);
        const halfRing = { found, off: lengthFromUnits(Math.round(Math.abs(gap))) };
        const correction = workOutLieFlat({ ...drawn, halfRing }).correction!;
        fc.pre(correction.newWedge !== null);
        const sewn = seamOf(drawn);
        const by = Math.sign(gap) * correction.seams;
        const again = gapOfHalf(half, { ...sewn, outer: sewn.outer - by });
        const inside = gapOfHalf(half, { ...sewn, inner: sewn.inner + by });
        const other = gapOfHalf([...half.slice(1), wedgeOf(drawn, correction.newWedge.angle)], sewn);
        for (const left of [again, inside]) expect(Math.abs(left)).toBeLessThan(0.08 * Math.abs(gap) + 80);
        // A wide wedge with another angle also has longer legs, which shifts what is sewn to them end on end.
        const shift = (Math.tan(half[0]!.angle / 2) * Math.sin(half[0]!.angle)) / 2;
        expect(Math.abs(other)).toBeLessThan((0.08 + shift) * Math.abs(gap) + 80);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a ring that is not flat', () => {
  it('rises as a cone folded from 20,000 slivers does', () => {
    const slivers = 20_000;
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 3, noNaN: true }), (missing) => {
        // All slivers have the reach as their legs; around the axis their short sides make a regular polygon.
        const reach = 30;
        const shortSide = 2 * reach * Math.sin((2 * Math.PI - missing) / slivers / 2);
        const around = shortSide / 2 / Math.sin(Math.PI / slivers);
        expect(coneRise(reach, missing)).toBeCloseTo(Math.sqrt(reach ** 2 - around ** 2), 5);
      }),
    );
  });

  it('ruffles nearly as high as an even wave of the same length on a ball', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: Math.PI, noNaN: true }),
        fc.integer({ min: 2, max: 6 }),
        (extra, waves) => {
          const exact = 2 * Math.sin(waveOnBall(2 * Math.PI + extra, waves));
          const ratio = waveHeight(1, extra, waves) / exact;
          expect(ratio).toBeLessThan(1 + 1e-5);
          expect(ratio).toBeGreaterThan(extra < Math.PI / 9 ? 0.97 : 0.85);
        },
      ),
      { numRuns: 15 },
    );
  });
});

/** The height in radians at which an even wave around a ball of radius 1 has this length, by halving. */
function waveOnBall(length: number, waves: number): number {
  let [low, high] = [0, 1.5];
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2;
    if (lengthOfWave(middle, waves) < length) low = middle;
    else high = middle;
  }
  return low;
}

/** Point by point along the wave in space. */
function lengthOfWave(height: number, waves: number): number {
  const points = 4_000;
  const at = (index: number) => {
    const around = (2 * Math.PI * index) / points;
    const up = height * Math.sin(waves * around);
    return [Math.cos(up) * Math.cos(around), Math.cos(up) * Math.sin(around), Math.sin(up)] as const;
  };
  let length = 0;
  for (let index = 0; index < points; index += 1) {
    const [from, to] = [at(index), at(index + 1)];
    length += Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  }
  return length;
}

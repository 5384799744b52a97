import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stripWidthFor } from '#core/calculators/binding/strip-width';
import { STARTING_LIMITS } from '#core/calculators/curves/curve-fields';
import {
  type BoundCurve,
  curveStrains,
  narrowestStrip,
  seamsForStrip,
  smallestRadius,
  strainVerdict,
  turnedStrain,
  widestSeam,
  widestStrip,
} from '#core/calculators/curves/strain';

const LIMITS = { comfortable: 8, hard: 16, impossible: 22 };

/** In inches; the formulas take any unit. */
const anyCurve: fc.Arbitrary<BoundCurve> = fc.record({
  side: fc.constantFrom('inside', 'outside'),
  radius: fc.double({ min: 1, max: 40, noNaN: true }),
  seam: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
  fold: fc.constantFrom('double', 'single'),
  strip: fc.double({ min: 1.2, max: 4, noNaN: true }),
  thickness: fc.double({ min: 0, max: 0.3, noNaN: true }),
});
const someLimit = fc.double({ min: 0.02, max: 0.3, noNaN: true });
const goesWith = (curve: BoundCurve, most: number) => {
  const strains = curveStrains(curve);
  return strains.back >= 0 && turnedStrain(strains) <= most;
};

describe('the limits to start from', () => {
  it('are those of a weave whose threads shift by 10°, 20° and 30°: 8.3%, 15.8% and 22.5% (derived)', () => {
    const stretch = (degrees: number) => 100 * (Math.SQRT2 * Math.cos((degrees * Math.PI) / 360) - 1);
    expect(stretch(90)).toBeCloseTo(0, 12);
    expect(stretch(80)).toBeCloseTo(8.3, 1);
    expect(stretch(70)).toBeCloseTo(15.8, 1);
    expect(stretch(60)).toBeCloseTo(22.5, 1);
    expect(Math.abs(STARTING_LIMITS.comfortableLimit - stretch(80))).toBeLessThan(0.5);
    expect(Math.abs(STARTING_LIMITS.hardLimit - stretch(70))).toBeLessThan(0.5);
    expect(Math.abs(STARTING_LIMITS.impossibleLimit - stretch(60))).toBeLessThan(0.5);
  });
});

describe('how far a strip has to stretch or ease', () => {
  const around = (radius: number) => 2 * Math.PI * radius;

  it('in a hole is the ratio of its circles to the stitching (derived)', () => {
    // A 6 1/2 in hole, 2 1/2 in double fold: stitching at 3 1/2, fold flat at 3 1/4 + 1 1/4, fold on the back 3/8 past the stitching.
    const strains = curveStrains({
      ...{ side: 'inside', radius: 3.25, seam: 0.25, fold: 'double', strip: 2.5, thickness: 0.125 },
    });
    expect(strains.sewing).toBeCloseTo(around(4.5) / around(3.5) - 1, 12);
    expect(strains.edge).toBeCloseTo(1 - around(3.25) / around(3.5), 12);
    expect(strains.back).toBeCloseTo(around(3.875) / around(3.5) - 1, 12);
  });

  it('on an outer edge has the circles on the other side of the stitching (derived)', () => {
    // A 5 in round, 2 1/4 in double fold: stitching at 2 1/4, the edge at 2 1/2, the fold on the back 1/4 in inside the stitching.
    const strains = curveStrains({
      ...{ side: 'outside', radius: 2.5, seam: 0.25, fold: 'double', strip: 2.25, thickness: 0.125 },
    });
    expect(strains.sewing).toBeCloseTo(1 - around(2.25 - 0.875) / around(2.25), 12);
    expect(strains.edge).toBeCloseTo(around(2.5) / around(2.25) - 1, 12);
    expect(strains.back).toBeCloseTo(1 - around(2) / around(2.25), 12);
  });

  it('leaves on the back what the strip has after seam, front, edge and its own allowance, turn by turn', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const { fold, strip, seam, thickness, radius, side } = curve;
        // Double: half the strip goes over allowance, front, edge and back as far as the stitching. Single: its far edge is turned under too.
        const used = fold === 'double' ? [seam, seam, thickness, seam] : [seam, seam, thickness, seam, seam];
        const left = used.reduce((rest, one) => rest - one, fold === 'double' ? strip / 2 : strip);
        const stitched = side === 'inside' ? radius + seam : radius - seam;
        expect(curveStrains(curve).back).toBeCloseTo(left / stitched, 9);
      }),
    );
  });

  it('is less on a wider curve, not less for a wider strip, and does not depend on the unit', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const given = turnedStrain(curveStrains(curve));
        const of = (change: Partial<BoundCurve>) => turnedStrain(curveStrains({ ...curve, ...change }));
        expect(of({ radius: curve.radius * 1.1 })).toBeLessThan(given);
        expect(of({ strip: curve.strip * 1.1 })).toBeGreaterThanOrEqual(given);
        const { radius, seam, strip, thickness } = curve;
        const inMillimeters = {
          ...{ radius: 25.4 * radius, seam: 25.4 * seam },
          ...{ strip: 25.4 * strip, thickness: 25.4 * thickness },
        };
        expect(of(inMillimeters)).toBeCloseTo(given, 9);
      }),
    );
  });
});

describe('the verdict', () => {
  it('is that of the greater of edge and back, at the limits that are set', () => {
    const percents = [7.9, 8, 8.1, 16, 16.1, 22, 22.1];
    const words = ['comfortable', 'comfortable', 'with care', 'with care', 'hard', 'hard', 'too tight'];
    const verdict = (edge: number, back: number) =>
      strainVerdict({ edge: edge / 100, back: back / 100 }, LIMITS);
    expect(percents.map((percent) => verdict(percent, 0))).toEqual(words);
    expect(percents.map((percent) => verdict(1, percent))).toEqual(words);
  });

  it('is never comfortable where the fold stops short of the stitching', () => {
    expect(strainVerdict({ edge: 0.01, back: -0.001 }, LIMITS)).toBe('too narrow');
    expect(strainVerdict({ edge: 0.01, back: 0 }, LIMITS)).toBe('comfortable');
  });
});

describe('what goes around', () => {
  it('is at its limit with the widest strip, and there is none only where the seam alone gives more', () => {
    fc.assert(
      fc.property(anyCurve, someLimit, (curve, most) => {
        const strip = widestStrip(curve, most);
        if (strip === null) {
          expect(curveStrains(curve).edge).toBeGreaterThan(most);
          return;
        }
        expect(turnedStrain(curveStrains({ ...curve, strip }))).toBeCloseTo(most, 9);
        expect(goesWith({ ...curve, strip: strip * 1.001 }, most)).toBe(false);
        expect(goesWith({ ...curve, strip: narrowestStrip(curve) + 1e-9 }, most)).toBe(true);
        expect(curveStrains({ ...curve, strip: narrowestStrip(curve) - 1e-6 }).back).toBeLessThan(0);
      }),
    );
  });

  it('is at its limit on the smallest radius', () => {
    fc.assert(
      fc.property(anyCurve, someLimit, (curve, most) => {
        const radius = smallestRadius(curve, most);
        const given = turnedStrain(curveStrains({ ...curve, radius }));
        if (radius > 0) expect(given).toBeCloseTo(most, 9);
        else expect(given).toBeLessThanOrEqual(most + 1e-9);
      }),
    );
  });

  it('are just the seams that a walk through all of them finds', () => {
    fc.assert(
      fc.property(anyCurve, someLimit, (curve, most) => {
        const range = seamsForStrip(curve, most);
        for (let step = 1; step <= 200; step += 1) {
          const seam = step / 200;
          if (curve.side === 'outside' && seam >= curve.radius) return;
          const isIn = range !== null && seam >= range.least - 1e-9 && seam <= range.most + 1e-9;
          const isOnBound =
            range !== null && Math.min(Math.abs(seam - range.least), Math.abs(seam - range.most)) < 1e-7;
          if (!isOnBound) expect(goesWith({ ...curve, seam }, most)).toBe(isIn);
        }
      }),
    );
  });

  it('is at most the widest front that wraps with its cover, in double and single fold, as a walk finds it', () => {
    fc.assert(
      fc.property(anyCurve, someLimit, fc.double({ min: 0, max: 0.5, noNaN: true }), (curve, most, cover) => {
        const widest = widestSeam({ ...curve, cover }, most);
        const goes = (seam: number) => {
          const strip = stripWidthFor(curve.fold, { seam, thickness: curve.thickness, cover });
          return turnedStrain(curveStrains({ ...curve, seam, strip })) <= most + 1e-9;
        };
        if (widest > 0) expect(goes(widest)).toBe(true);
        for (let step = 1; step <= 100; step += 1) {
          const seam = (step / 100) * 0.99 * curve.radius;
          if (seam > widest + 1e-6) expect(goes(seam)).toBe(false);
        }
      }),
    );
  });
});

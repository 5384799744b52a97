import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { innerBinding } from '#core/calculators/curves/inner-binding/inner-binding';
import type { InnerBindingInput } from '#core/calculators/curves/inner-binding/input';
import {
  type BoundCurve,
  curveStrains,
  greatestStrain,
  latticeStretch,
  smallestRadius,
  strainVerdict,
  widestSeam,
  widestStrip,
} from '#core/calculators/curves/strain';
import { stripWidthFor } from '#core/calculators/binding/strip-width';
import { formatSentence } from '#core/calculators/format-quantity';
import { STARTING_HABITS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

const starting = (change: Partial<InnerBindingInput> = {}): InnerBindingInput => ({
  ...innerBinding.fromProject({
    outline: { shape: 'circle', diameter: inches(50) },
    hole: { diameter: inches(6.5) },
    hasSlit: false,
    settings: STARTING_HABITS,
  }),
  ...change,
});
const answer = (change: Partial<InnerBindingInput> = {}) => {
  const result = innerBinding.calculate(starting(change));
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const style = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
} as const;
const said = (change: Partial<InnerBindingInput> = {}) =>
  answer(change)
    .notes.map((note) => formatSentence(note, style))
    .join('\n');

const LIMITS = { comfortable: 8, hard: 16, impossible: 22, straight: 2 };

describe('the seam line of a hole', () => {
  // Trade checks 11 (derived): radius, raw edge, stitch line with a 1/4 in seam, stretch if cut to the raw edge.
  it.each([
    [0.75, 4.712, 6.283, 33.3],
    [1, 6.283, 7.854, 25],
    [1.5, 9.425, 10.996, 16.7],
    [2, 12.566, 14.137, 12.5],
    [3, 18.85, 20.42, 8.3],
    [5, 31.416, 32.987, 5],
  ])(
    'of radius %d in: raw edge %d, seam line %d, and a strip cut to the raw edge stretches %d %%',
    (r, raw, seam, stretch) => {
      const { details } = answer({ holeDiameter: inches(2 * r) });
      expect(details.seamLine / UNITS_PER_INCH).toBeCloseTo(seam, 3);
      expect(2 * Math.PI * r).toBeCloseTo(raw, 3);
      expect(100 * (details.seamLine / inches(1) / (2 * Math.PI * r) - 1)).toBeCloseTo(stretch, 1);
    },
  );

  it('and a joint of fold, overlap and tuck make the strip, rounded up', () => {
    const { details } = answer();
    expect(details.joint).toBe(inches(1.25));
    expect(details.stripLength / UNITS_PER_INCH).toBeCloseTo(2 * Math.PI * 3.5 + 1.25, 9);
    expect(details.stripToCut).toBe(inches(23.25));
  });

  it('gives the strip that a 4 1/2 in round takes: 14.13 + 3 in spare, cut 17 (common practice, on an outer edge)', () => {
    expect(4.5 * Math.PI + 3).toBeCloseTo(17.14, 2);
    const { details } = answer({
      holeDiameter: inches(4.5),
      startFold: inches(1.5),
      overlap: inches(1.5),
      tuck: inches(0),
    });
    expect(details.stripLength).toBeGreaterThan(17.13 * UNITS_PER_INCH);
  });

  it('is reached by the cut strip whatever the rounding, and grows with the hole', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 400 }), fc.constantFrom(4, 8, 16), (eighths, step) => {
        const { details } = answer({ holeDiameter: inches(eighths / 8), cutStep: inches(1 / step) });
        expect(details.stripToCut).toBeGreaterThanOrEqual(details.stripLength - 1e-6);
        expect(details.stripToCut - details.stripLength).toBeLessThan(inches(1 / step));
        expect(answer({ holeDiameter: inches((eighths + 1) / 8) }).details.seamLine).toBeGreaterThan(
          details.seamLine,
        );
      }),
    );
  });

  it('fits in one piece along the diagonal of the square named, and of none half an inch smaller', () => {
    const { details } = answer();
    const room = (side: number) => side * Math.SQRT2 - inches(1.5);
    expect(room(details.squareForOneStrip)).toBeGreaterThanOrEqual(details.stripLength);
    expect(room(details.squareForOneStrip - inches(1 / 2))).toBeLessThan(details.stripLength);
  });
});

describe('a slit', () => {
  const slit = { hasSlit: true, bindLegs: true, slitLength: inches(20) };

  it('makes the ring an arc and two legs, as the sewn path measured point by point', () => {
    const { details } = answer(slit);
    // The stitching as a closed walk: the circle of radius q, without the part between the two lines a seam beside the slit.
    const q = 3.5;
    const steps = 200_000;
    let arc = 0;
    for (let index = 0; index < steps; index += 1) {
      const angle = (2 * Math.PI * (index + 0.5)) / steps;
      const isBesideSlit = Math.cos(angle) > 0 && Math.abs(q * Math.sin(angle)) < 1 / 4;
      if (!isBesideSlit) arc += (2 * Math.PI * q) / steps;
    }
    expect(details.seamLine / UNITS_PER_INCH).toBeCloseTo(arc, 3);
    expect(details.legs).toBe(inches(40.5));
    expect(details.joint).toBe(inches(1));
  });

  it('bound with the outside leaves the arc alone', () => {
    expect(answer({ ...slit, bindLegs: false }).details.legs).toBe(0);
  });

  it('comes from the project, from edge to hole', () => {
    const asked = innerBinding.fromProject({
      outline: { shape: 'circle', diameter: inches(50) },
      hole: { diameter: inches(5) },
      hasSlit: true,
      settings: STARTING_HABITS,
    });
    expect(asked).toMatchObject({ slitLength: inches(22.5), hasSlit: true, bindLegs: true });
  });
});

describe('how far the strip has to give', () => {
  it('grows as a lattice of threads does when it is turned: 8.3, 15.8 and 22.5 % (derived)', () => {
    expect(100 * latticeStretch(80)).toBeCloseTo(8.3, 1);
    expect(100 * latticeStretch(70)).toBeCloseTo(15.8, 1);
    expect(100 * latticeStretch(60)).toBeCloseTo(22.5, 1);
    expect(latticeStretch(90)).toBeCloseTo(0, 12);
  });

  it('is the ratio of circles: fold, edge and back against the stitching', () => {
    const { strains } = answer().details;
    const around = (radius: number) => 2 * Math.PI * radius;
    expect(strains.sewing).toBeCloseTo(around(3.25 + 0.75) / around(3.5) - 1, 12);
    expect(strains.edge).toBeCloseTo(1 - around(3.25) / around(3.5), 12);
    expect(strains.back).toBeCloseTo(around(3.5 + 1 / 8) / around(3.5) - 1, 12);
  });

  const anyCurve: fc.Arbitrary<BoundCurve> = fc.record({
    side: fc.constantFrom('inside', 'outside'),
    radius: fc.double({ min: 1, max: 40, noNaN: true }),
    seam: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
    fold: fc.constantFrom('double', 'single'),
    strip: fc.double({ min: 1.2, max: 4, noNaN: true }),
    cover: fc.double({ min: 0, max: 0.5, noNaN: true }),
  });
  const someLimit = fc.double({ min: 0.02, max: 0.3, noNaN: true });

  it('is just the limit for the widest strip and at the smallest radius', () => {
    fc.assert(
      fc.property(anyCurve, someLimit, (curve, most) => {
        const widest = { ...curve, strip: widestStrip(curve, most) };
        expect(curveStrains(widest).sewing).toBeCloseTo(most, 9);
        const radius = smallestRadius(curve, most);
        if (radius > 0) expect(greatestStrain(curveStrains({ ...curve, radius }))).toBeCloseTo(most, 9);
        else expect(greatestStrain(curveStrains({ ...curve, radius: 0 }))).toBeLessThanOrEqual(most + 1e-9);
      }),
    );
  });

  it('is just the limit for the widest front that wraps, double or single', () => {
    fc.assert(
      fc.property(
        anyCurve,
        someLimit,
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (curve, most, thickness) => {
          const seam = widestSeam({ ...curve, thickness }, most);
          fc.pre(seam > 1e-6);
          const strip = stripWidthFor(curve.fold, { seam, thickness, cover: curve.cover });
          expect(curveStrains({ ...curve, seam, strip }).sewing).toBeCloseTo(most, 9);
        },
      ),
    );
  });

  it('is less for a larger ring and more for a wider strip, and does not depend on the unit', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const strain = greatestStrain(curveStrains(curve));
        expect(greatestStrain(curveStrains({ ...curve, radius: curve.radius * 1.1 }))).toBeLessThan(strain);
        expect(greatestStrain(curveStrains({ ...curve, strip: curve.strip * 1.1 }))).toBeGreaterThanOrEqual(
          strain,
        );
        const { radius, seam, strip, cover } = curve;
        const mm = {
          ...curve,
          radius: 25.4 * radius,
          seam: 25.4 * seam,
          strip: 25.4 * strip,
          cover: 25.4 * cover,
        };
        expect(greatestStrain(curveStrains(mm))).toBeCloseTo(strain, 9);
      }),
    );
  });
});

describe('the verdict', () => {
  it('goes by the limits that are set', () => {
    const verdicts = [7.9, 8, 8.1, 16, 16.1, 22, 22.1].map((percent) =>
      strainVerdict(percent / 100, LIMITS, 'bias'),
    );
    expect(verdicts).toEqual([
      'comfortable',
      'comfortable',
      'with care',
      'with care',
      'hard',
      'hard',
      'impossible',
    ]);
    expect(strainVerdict(0.02, LIMITS, 'straight')).toBe('comfortable');
    expect(strainVerdict(0.021, LIMITS, 'straight')).toBe('impossible');
  });

  it('is that straight grain does not go round a tight ring, while bias does (common practice)', () => {
    expect(answer({ grain: 'straight' }).details.verdict).toBe('impossible');
    expect(said({ grain: 'straight' })).toContain('Straight grain does not go round this ring');
    expect(answer({ grain: 'bias' }).details.verdict).toBe('with care');
  });

  it('names what would go where the strip is too wide', () => {
    const wide = { stripWidth: inches(2.5) };
    expect(answer(wide).details.verdict).toBe('impossible');
    // 2(s + 16 % of 3.5) = 1.62, down to 1 1/2; and (1 / 16 % - 1/4) · 2 = 12 in across.
    expect(said(wide)).toContain('takes a strip of 1½ in at most');
    expect(said(wide)).toContain('a hole of 12 in or more');
    expect(said(wide)).toContain('A narrower binding goes');
  });

  it('is that nothing goes round a ring smaller than its own thickness allows', () => {
    expect(said({ holeDiameter: inches(1), stripWidth: inches(2) })).toContain(
      'No strip that wraps this thickness',
    );
  });

  it('keeps its order when the settings are turned round', () => {
    const mixed = answer({ comfortableLimit: 20, hardLimit: 10, impossibleLimit: 5 });
    expect(mixed.details.verdict).toBe('comfortable');
  });
});

describe('what is said beside the answer', () => {
  it('are the facts of the trade, each marked common practice', () => {
    const lines = said()
      .split('\n')
      .filter((line) => line.startsWith('Common practice'));
    expect(
      lines.some((line) => line.includes('under by ½ in') && line.includes('cover the first by ½ in')),
    ).toBe(true);
    expect(lines).toHaveLength(4);
    expect(lines.some((line) => line.includes('2 to 2.5 mm'))).toBe(true);
    expect(lines.some((line) => line.includes('28 mm'))).toBe(true);
    expect(said({ hasSlit: true })).not.toContain('cover the first');
  });

  it('is to tuck and overlap below 8 in across (common practice), and a warning where a diagonal joint is asked for', () => {
    expect(said({ joint: 'diagonal' })).toContain('leaves no room to sew a diagonal joint');
    expect(said({ joint: 'tuck' })).toContain('Under 8 in across, tuck and overlap');
    expect(said({ joint: 'diagonal', holeDiameter: inches(8) })).not.toContain('no room');
    expect(answer({ joint: 'diagonal', holeDiameter: inches(8) }).details.joint).toBe(inches(1.5));
  });

  it('warns where the fold does not reach the stitching on the back', () => {
    expect(said()).toContain('stops ⅛ in before the stitching on the back');
    expect(said({ stripWidth: inches(2) })).not.toContain('before the stitching on the back');
  });

  it('shows the cautions for blade, iron and needles', () => {
    const cautions = answer().notes.filter(({ kind }) => kind === 'caution');
    expect(cautions).toHaveLength(3);
  });
});

it('refuses a strip that the seam uses up, and names the field', () => {
  expect(innerBinding.calculate(starting({ stripWidth: inches(1 / 2) }))).toMatchObject({
    ok: false,
    error: { code: 'strip-too-narrow', field: ['stripWidth'] },
  });
});

it('draws the ring to scale: cut edge, stitching and fold about one center', () => {
  const circles = answer().diagram!.parts.filter((part) => part.part === 'circle');
  expect(circles.map(({ radius, tone }) => [tone, radius])).toEqual([
    ['fold', inches(4)],
    ['seam', inches(3.5)],
    ['cut', inches(3.25)],
  ]);
});

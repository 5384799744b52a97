import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_LIMITS } from '#core/calculators/curves/curve-fields';
import { innerBinding } from '#core/calculators/curves/inner-binding/inner-binding';
import type { InnerBindingInput } from '#core/calculators/curves/inner-binding/input';
import {
  type BoundCurve,
  curveStrains,
  greatestStrain,
  smallestRadius,
  strainVerdict,
  widestSeam,
  widestStrip,
} from '#core/calculators/curves/strain';
import { stripWidthFor } from '#core/calculators/binding/strip-width';
import { formatSentence } from '#core/calculators/format-quantity';
import { CAUTIONS } from '#core/domain/cautions';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

const starting = (change: Partial<InnerBindingInput> = {}): InnerBindingInput => ({
  ...innerBinding.fromProject({
    outline: { shape: 'circle', diameter: inches(50) },
    hole: { diameter: inches(6.5) },
    hasSlit: false,
    settings: STARTING_SETTINGS,
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
const notesOf = (change: Partial<InnerBindingInput> = {}) =>
  answer(change)
    .notes.map((note) => formatSentence(note, style))
    .join('\n');

const LIMITS = { comfortable: 8, hard: 16, impossible: 22, straight: 2 };

describe('the seam line of a hole', () => {
  // Derived: radius, raw edge, seam line with a 1/4 in seam, stretch if cut to the length of the raw edge.
  it.each([
    [0.75, 4.712, 6.283, 33.3],
    [1, 6.283, 7.854, 25],
    [1.5, 9.425, 10.996, 16.7],
    [2, 12.566, 14.137, 12.5],
    [3, 18.85, 20.42, 8.3],
    [5, 31.416, 32.987, 5],
  ])(
    'of radius %d in: raw edge %d, seam line %d, and a strip cut to the raw edge stretches %d%%',
    (r, raw, seam, stretch) => {
      const { details } = answer({ holeDiameter: inches(2 * r) });
      expect(details.seamLine / UNITS_PER_INCH).toBeCloseTo(seam, 3);
      expect(2 * Math.PI * r).toBeCloseTo(raw, 3);
      expect(100 * (details.seamLine / inches(1) / (2 * Math.PI * r) - 1)).toBeCloseTo(stretch, 1);
    },
  );

  it('plus fold, overlap and tuck is the length of the strip, rounded up (derived)', () => {
    const { details } = answer();
    expect(details.join).toBe(inches(1.25));
    expect(details.stripLength / UNITS_PER_INCH).toBeCloseTo(2 * Math.PI * 3.5 + 1.25, 9);
    expect(details.stripToCut).toBe(inches(23.25));
  });

  it('needs a strip of 17 in or more for a 4 1/2 in circle: 14.13 in plus 3 in extra (common practice, on an outer edge)', () => {
    expect(4.5 * Math.PI + 3).toBeCloseTo(17.14, 2);
    const { details } = answer({
      holeDiameter: inches(4.5),
      startFold: inches(1.5),
      overlap: inches(1.5),
      tuck: inches(0),
    });
    expect(details.stripLength).toBeGreaterThan(17.13 * UNITS_PER_INCH);
  });

  it('is never longer than the cut strip with any rounding, and grows with the hole', () => {
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

  it('has a strip that fits along the diagonal of the named square, but not of one half an inch smaller', () => {
    const { details } = answer();
    const room = (side: number) => side * Math.SQRT2 - inches(1.5);
    expect(room(details.squareForOneStrip)).toBeGreaterThanOrEqual(details.stripLength);
    expect(room(details.squareForOneStrip - inches(1 / 2))).toBeLessThan(details.stripLength);
  });
});

describe('a slit', () => {
  const slit = { hasSlit: true, bindLegs: true, slitLength: inches(20) };

  it('makes the ring an arc and two sides, as a numeric walk along the stitching does', () => {
    const { details } = answer(slit);
    // The circle of radius q without the part between the two stitching lines, one seam allowance beside the slit.
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
    expect(details.join).toBe(inches(1));
  });

  it('bound with the outer edge leaves only the arc', () => {
    expect(answer({ ...slit, bindLegs: false }).details.legs).toBe(0);
  });

  it('starts with the distance from the edge to the hole of the project (derived)', () => {
    const asked = innerBinding.fromProject({
      outline: { shape: 'circle', diameter: inches(50) },
      hole: { diameter: inches(5) },
      hasSlit: true,
      settings: STARTING_SETTINGS,
    });
    expect(asked).toMatchObject({ slitLength: inches(22.5), hasSlit: true, bindLegs: true });
  });
});

describe('how far the strip has to stretch or ease', () => {
  it('has starting limits as a weave does whose threads shift by 10°, 20° and 30°: 8.3%, 15.8% and 22.5% (derived)', () => {
    const stretch = (degrees: number) => 100 * (Math.SQRT2 * Math.cos((degrees * Math.PI) / 360) - 1);
    expect(stretch(90)).toBeCloseTo(0, 12);
    expect(stretch(80)).toBeCloseTo(8.3, 1);
    expect(stretch(70)).toBeCloseTo(15.8, 1);
    expect(stretch(60)).toBeCloseTo(22.5, 1);
    expect(Math.abs(STARTING_LIMITS.comfortableLimit - stretch(80))).toBeLessThan(0.5);
    expect(Math.abs(STARTING_LIMITS.hardLimit - stretch(70))).toBeLessThan(0.5);
    expect(Math.abs(STARTING_LIMITS.impossibleLimit - stretch(60))).toBeLessThan(0.5);
  });

  it('is the ratio of circles: fold, edge and back to the stitching (derived)', () => {
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

  it('equals the limit for the widest strip and at the smallest radius', () => {
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

  it('equals the limit for the widest front that wraps, in double and single fold', () => {
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

  it('is smaller for a larger ring and larger for a wider strip, and does not depend on the unit', () => {
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
  it('follows the limits that are set', () => {
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

  it('is impossible for straight grain around a tight ring, but not for bias (common practice)', () => {
    expect(answer({ grain: 'straight' }).details.verdict).toBe('impossible');
    expect(notesOf({ grain: 'straight' })).toContain('A straight-grain strip won’t go around this hole');
    expect(answer({ grain: 'bias' }).details.verdict).toBe('with care');
  });

  it('comes with a narrower strip and a larger hole if the strip is too wide', () => {
    const wide = { stripWidth: inches(2.5) };
    expect(answer(wide).details.verdict).toBe('impossible');
    // Derived: 2(s + 16% of 3.5) = 1.62, rounded down to 1 1/2; and (1 / 16% - 1/4) · 2 = 12 in.
    expect(notesOf(wide)).toContain('use a strip 1½ in wide or narrower');
    expect(notesOf(wide)).toContain('a hole 12 in or larger');
    expect(notesOf(wide)).toContain('A narrower binding works');
  });

  it('is that nothing goes around a ring too small for the thickness', () => {
    expect(notesOf({ holeDiameter: inches(1), stripWidth: inches(2) })).toContain(
      'No strip that wraps this thickness',
    );
  });

  it('keeps its order if the limits are in the wrong order', () => {
    const mixed = answer({ comfortableLimit: 20, hardLimit: 10, impossibleLimit: 5 });
    expect(mixed.details.verdict).toBe('comfortable');
  });
});

describe('the notes', () => {
  it('include common practice, marked as such', () => {
    const lines = notesOf()
      .split('\n')
      .filter((line) => line.startsWith('Common practice'));
    expect(
      lines.some(
        (line) => line.includes('under by ½ in') && line.includes('last ½ in over the first stitches'),
      ),
    ).toBe(true);
    expect(lines).toHaveLength(4);
    expect(lines.some((line) => line.includes('2 to 2.5 mm'))).toBe(true);
    expect(lines.some((line) => line.includes('28 mm'))).toBe(true);
    expect(notesOf({ hasSlit: true })).not.toContain('over the first stitches');
  });

  it('suggest to tuck and overlap below 8 in (common practice), and warn of a diagonal join there', () => {
    expect(notesOf({ join: 'diagonal' })).toContain('leaves no room to sew a diagonal join');
    expect(notesOf({ join: 'tuck' })).toContain(
      'In a hole under 8 in, the ends can only be overlapped and tucked',
    );
    expect(notesOf({ join: 'diagonal', holeDiameter: inches(8) })).not.toContain('no room');
    expect(answer({ join: 'diagonal', holeDiameter: inches(8) }).details.join).toBe(inches(1.5));
  });

  it('warn if the fold does not reach the stitching on the back, with advice that can be followed', () => {
    // A 1 1/2 in strip wraps a 1/4 in seam in a hole that takes no wider strip: (1.5 - 2/8 - 2/8) / 6 = 1/6 in, down to 5/32.
    expect(notesOf()).toContain(
      'With a ¼ in seam, this strip ends ⅛ in short of the stitching on the back. A wider strip would not go around this hole. Sew a seam of 5/32 in or less.',
    );
    expect(notesOf({ holeDiameter: inches(20) })).toContain('Use a 2 in strip or a narrower seam.');
    expect(notesOf({ stripWidth: inches(2) })).not.toContain('short of the stitching on the back');
  });

  it('have the usual cautions', () => {
    const cautions = answer().notes.filter(({ kind }) => kind === 'caution');
    const expected = [
      CAUTIONS.rotaryBlade,
      CAUTIONS.iron,
      CAUTIONS.pins,
      CAUTIONS.machineNeedle,
      CAUTIONS.usedBlades,
    ];
    expect(cautions.map(({ says }) => says)).toEqual(expected);
  });
});

it('refuses a strip too narrow for the seam, and names the field', () => {
  expect(innerBinding.calculate(starting({ stripWidth: inches(1 / 2) }))).toMatchObject({
    ok: false,
    error: { code: 'strip-too-narrow', field: ['stripWidth'] },
  });
});

it('draws cut edge, stitching and fold to scale around one center', () => {
  const circles = answer().diagram!.parts.filter((part) => part.part === 'circle');
  expect(circles.map(({ radius, tone }) => [tone, radius])).toEqual([
    ['fold', inches(4)],
    ['seam', inches(3.5)],
    ['cut', inches(3.25)],
  ]);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { innerBinding } from '#core/calculators/curves/inner-binding/inner-binding';
import type { InnerBindingInput } from '#core/calculators/curves/inner-binding/input';
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
    const side = details.squareForOneStrip!;
    const room = (square: number) => square * Math.SQRT2 - inches(2.25);
    expect(room(side)).toBeGreaterThanOrEqual(details.stripLength);
    expect(room(side - inches(1 / 2))).toBeLessThan(details.stripLength);
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

  it('call a diagonal join below 8 in hard to sew in place, and name the loop sewn first (common practice)', () => {
    const note = (join: 'tuck' | 'diagonal') =>
      answer({ join }).notes.find(({ says }) => says.includes('In a hole under'));
    expect(note('diagonal')).toMatchObject({ kind: 'tip' });
    expect(note('diagonal')?.says).toContain('a loop of the seam line’s length first');
    expect(note('tuck')).toMatchObject({ kind: 'tip' });
    expect(note('tuck')?.says).toContain('tucking the ends is the easy way');
    expect(notesOf({ join: 'diagonal', holeDiameter: inches(8) })).not.toContain('In a hole under');
    expect(answer({ join: 'diagonal', holeDiameter: inches(8) }).details.join).toBe(inches(2.25));
  });

  it('say that the strip is laid on at its natural length, what a wandering cut does, and how a print is cut', () => {
    const words = notesOf();
    expect(words).toContain('at its natural length or just taut, never pulled hard');
    expect(words).toContain('A cut that wanders by less than ¼ in is still covered');
    expect(words).toContain('from a single layer');
    expect(words).toContain('zigzag the seam allowance flat');
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
    ['fold', inches(4.375)],
    ['seam', inches(3.5)],
    ['cut', inches(3.25)],
  ]);
});

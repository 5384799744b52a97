import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthQuantity, Note } from '#core/calculators/explanation';
import { facing } from '#core/calculators/edge-finish/facing/facing';
import { innerBinding } from '#core/calculators/curves/inner-binding/inner-binding';
import type { InnerBindingInput } from '#core/calculators/curves/inner-binding/input';
import { answerCalculator } from '#core/calculators/complete-input';
import { formatSentence } from '#core/calculators/format-quantity';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromExact, lengthFromInches as inches, type Length, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';

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
const wordsOf = (change: Partial<InnerBindingInput>) =>
  answer(change)
    .notes.map((note) => formatSentence(note, style))
    .join('\n');
const goes = (change: Partial<InnerBindingInput>) =>
  ['comfortable', 'with care'].includes(answer(change).details.verdict);

/** The one warning that every answer has: a hole can’t be undone. */
const warningsOf = (change: Partial<InnerBindingInput>) =>
  answer(change).notes.filter(({ kind, says }) => kind === 'warning' && !says.includes('can’t be undone'));

describe('a hole of 6 1/2 in', () => {
  it('takes 2 1/2 in double-fold bias at a 1/4 in seam, with care: 10.7% (common practice)', () => {
    const { details } = answer({ stripWidth: inches(2.5) });
    expect(100 * details.strains.back).toBeCloseTo(10.714, 3);
    expect(details.verdict).toBe('with care');
    expect(warningsOf({ stripWidth: inches(2.5) })).toEqual([]);
  });

  it('says how much the fold stands up while it is sewn as a hint, never as a verdict', () => {
    // Derived: (1 1/4 - 1/4) / 3 1/2 = 28.6%, more than any bias gives.
    const note = answer({ stripWidth: inches(2.5) }).notes.find(({ says }) => says.includes('stands up'));
    expect(note?.kind).toBe('tip');
    expect(formatSentence(note!, style)).toContain('28.6%');
  });

  it('takes strips cut 2, 2 1/4, 2 1/2 and 2 3/4 in, as makers cut them for tight inside curves (common practice)', () => {
    for (const width of [2, 2.25, 2.5, 2.75]) expect(goes({ stripWidth: inches(width) })).toBe(true);
  });

  it('does not take a strip that stops before the stitching, nor one with too much past it', () => {
    // Derived: 3 · 1/4 + 1/8 = 7/8 in of half a strip are used; (3 1/2 / 2 - 7/8) / 3 1/2 = 25%.
    expect(answer({ stripWidth: inches(1.5) }).details.verdict).toBe('too narrow');
    expect(answer({ stripWidth: inches(3.5) }).details.verdict).toBe('too tight');
  });
});

describe('holes from 3 to 30 in across', () => {
  const sizes = Array.from({ length: 27 * 4 + 1 }, (_, index) => 3 + index / 4);

  it('are bound with the starting strip, seam, thickness and cover without a warning', () => {
    for (const across of sizes) {
      const hole = { holeDiameter: inches(across) };
      expect(goes(hole), `${across} in`).toBe(true);
      expect(warningsOf(hole), `${across} in`).toEqual([]);
    }
  });

  it('refuse straight grain whatever the turned figure says (common practice)', () => {
    for (const across of sizes) {
      expect(
        innerBinding.calculate(starting({ holeDiameter: inches(across), grain: 'straight' })),
      ).toMatchObject({ ok: false, error: { code: 'needs-bias', field: ['grain'] } });
    }
    // A hole of 30 in turns the strip by only 1.6%, which straight grain could give.
    expect(100 * answer({ holeDiameter: inches(30) }).details.strains.back).toBeLessThan(2);
  });

  it('never ask for a square larger than the fabric, and never for nothing', () => {
    for (const across of sizes) {
      const input = starting({ holeDiameter: inches(across) });
      const { details } = answer(input);
      expect(details.squareForOneStrip ?? 0).toBeLessThanOrEqual(inches(42));
      const [need] = innerBinding.needs!(input, details, inches(42));
      const { patches } = need!.amount as { patches: readonly { width: number; length: number }[] };
      expect(patches.length).toBe(1);
      for (const { width, length } of patches) {
        expect(Math.min(width, length)).toBeGreaterThan(0);
        expect(Math.max(width, length)).toBeLessThanOrEqual(inches(42));
      }
    }
  });
});

describe('a square wider than the fabric', () => {
  it('is not asked for by the program’s own piece, whose strip comes from a square for continuous bias', () => {
    // Hexagon 48 in, hole 6 1/2 in, slit: once a square of 47 in from fabric 42 in wide. With a 1 1/2 in strip, 11 1/2 in are enough.
    const whole = answerCalculator(innerBinding, SAMPLE_MEASUREMENTS, { stripWidth: '1 1/2 in' });
    if (!whole.ok) throw new Error('No answer');
    const { calculation, input } = whole.value;
    const details = calculation.details as ReturnType<typeof answer>['details'];
    expect(details.stripToCut).toBe(inches(64.5));
    expect(details.squareForOneStrip).toBeNull();
    expect(details.bias).toMatchObject({ way: 'continuous', pieces: 1, width: inches(11.5) });
    expect(calculation.figures.map(({ label }) => label)).not.toContain('Or a square for one unbroken strip');
    const [need] = innerBinding.needs!(input as InnerBindingInput, details, inches(42));
    expect(need?.amount).toMatchObject({ patches: [{ width: inches(11.5), length: inches(11.5) }] });
  });

  it('puts no line of 0 in on the shopping list for a hole of 18 in without a slit', () => {
    const input = starting({ holeDiameter: inches(18), stripWidth: inches(1.5) });
    const { details } = answer(input);
    expect(details.squareForOneStrip).toBeNull();
    const [need] = innerBinding.needs!(input, details, inches(42));
    expect(need?.fabricWidth).toBe(inches(42));
    expect(need?.amount).toMatchObject({ patches: [{ width: details.bias.width, count: 1 }] });
    expect(details.bias.width).toBeGreaterThan(0);
    expect(details.bias.gives).toBeGreaterThanOrEqual(details.stripLength);
  });

  it('follows the width of the fabric: joined strips, or a refusal with the field, where no square of it is enough', () => {
    expect(answer({ fabricWidth: inches(42) }).details.bias.way).toBe('continuous');
    expect(innerBinding.calculate(starting({ fabricWidth: inches(2) }))).toMatchObject({
      ok: false,
      error: { code: 'fabric-too-narrow', field: ['fabricWidth'] },
    });
  });
});

describe('the sides of a slit', () => {
  const slit = { hasSlit: true, bindLegs: true, slitLength: inches(20) } as const;

  it('may have straight strips, which leaves bias for the hole alone (common practice)', () => {
    const input = starting({ ...slit, legGrain: 'straight' });
    const { details } = answer(input);
    // Laid end to end, three strips with two diagonal joins are as long as the one bias strip: each join takes a strip width.
    expect(details.biasLength + 2 * details.legStrip - 2 * inches(2.25)).toBeCloseTo(details.stripLength, 6);
    expect(details.biasLength).toBeLessThan(inches(24.5));
    const cuts = innerBinding.cuts!(input, details);
    expect(cuts[1]).toMatchObject({ length: inches(2.25), count: 2, width: inches(21.875) });
    const [need] = innerBinding.needs!(input, details, inches(42));
    expect(need?.amount).toMatchObject({ patches: [{}, { width: cuts[1]!.width, count: 2 }] });
  });

  it('are told so where all of it is bias', () => {
    expect(wordsOf({ ...slit })).toContain('may be cut on the straight grain');
    expect(wordsOf({ ...slit, legGrain: 'straight' })).not.toContain('may be cut on the straight grain');
  });
});

describe('advice that can be followed', () => {
  const lengths = ({ values }: Note) =>
    Object.entries(values).flatMap(([name, quantity]) =>
      quantity.kind === 'length' ? [[name, quantity] as const] : [],
    );
  const asPrinted = ({ exact, rounding }: LengthQuantity): Length =>
    lengthFromExact(exact, rounding === 'up' ? 'up' : 'down', inches(1 / 64));
  const valuesOf = (note: Note) =>
    Object.fromEntries(lengths(note).map(([name, quantity]) => [name, asPrinted(quantity)])) as Record<
      string,
      Length
    >;

  /** The changes that a note asks for, each with the sizes as printed. */
  function changesOf(note: Note): readonly Partial<InnerBindingInput>[] {
    const { least, most, front, singleLeast, singleMost } = valuesOf(note);
    if (note.says.startsWith('With your {seam} seam')) return [{ stripWidth: least! }, { stripWidth: most! }];
    if (note.says.startsWith('With your strip')) return [{ seamAllowance: least! }, { seamAllowance: most! }];
    if (!note.says.startsWith('A narrower binding goes')) return [];
    const seam = { seamAllowance: front! };
    return [
      { ...seam, fold: 'double', stripWidth: least! },
      { ...seam, fold: 'double', stripWidth: most! },
      { ...seam, fold: 'single', stripWidth: singleLeast! },
      { ...seam, fold: 'single', stripWidth: singleMost! },
    ];
  }

  const sixteenths = (min: number, max: number) =>
    fc.integer({ min: 16 * min, max: 16 * max }).map((count) => inches(count / 16));
  const anyBinding = fc.record({
    holeDiameter: sixteenths(1, 20),
    stripWidth: sixteenths(1.25, 4),
    seamAllowance: sixteenths(0.125, 0.5),
    quiltThickness: sixteenths(0, 0.25),
    backCover: sixteenths(0, 0.25),
    fold: fc.constantFrom('double' as const, 'single' as const),
  });

  it('names no size that its own rule would call hard, and none of zero', () => {
    let [tried, followed] = [0, 0];
    fc.assert(
      fc.property(anyBinding, (own) => {
        if (!innerBinding.calculate(starting(own)).ok) return;
        tried += 1;
        for (const note of answer(own).notes) {
          for (const change of changesOf(note)) {
            followed += 1;
            expect(
              Math.min(...Object.values(change).filter((one) => typeof one === 'number')),
            ).toBeGreaterThan(0);
            expect(goes({ ...own, ...change }), `${note.says} ${JSON.stringify(change)}`).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
    expect(followed).toBeGreaterThan(tried / 2);
  });

  it('calls a seam of 0 in no advice: a 3 in hole, strip 1 1/4, seam 1/8, thickness and cover 1/16', () => {
    const own = { holeDiameter: inches(3), stripWidth: inches(1.25), seamAllowance: inches(1 / 8) };
    const small = { ...own, quiltThickness: inches(1 / 16), backCover: inches(1 / 16) };
    // Derived: (5/8 - 3/8 - 1/16) / 1 5/8 = 11.5%.
    expect(answer(small).details.verdict).toBe('with care');
    expect(wordsOf(small)).not.toMatch(/seam of 0 in/);
  });

  it('judges the fold on the back by what the strip leaves, not by the cover that was wished for', () => {
    const back = (cover: number) =>
      answer({ stripWidth: inches(2.5), backCover: inches(cover) }).details.strains.back;
    expect(100 * back(1 / 8)).toBeCloseTo(100 * (3 / 8 / 3.5), 9);
    expect(back(1 / 4)).toBe(back(1 / 8));
  });

  it('does not send her from 1 1/2 in to a strip that it refuses: the ways it names have numbers', () => {
    // Derived: narrowest 6/4 + 2/8 = 1 3/4; widest + 2 · 16% · 3 1/2 = 2.87, down to 2 55/64; seams (3/4 - 1/8) / 3 = 13/64 at most.
    const words = wordsOf({ stripWidth: inches(1.5) });
    expect(words).toContain('this strip ends ⅛ in short of the stitching on the back');
    expect(words).toContain('a strip from 1¾ in to 2 55/64 in wide goes');
    expect(words).toContain('With your strip, a seam from ⅛ in to 13/64 in goes');
    expect(goes({ stripWidth: inches(2) })).toBe(true);
  });

  it('calls no strip comfortable that stops short: a hole of 18 in with a strip of 1 in', () => {
    // Derived: 1/2 - 3/4 - 1/8 = 3/8 in short.
    const own = { holeDiameter: inches(18), stripWidth: inches(1) };
    expect(answer(own).details.verdict).toBe('too narrow');
    expect(wordsOf(own)).toContain('ends ⅜ in short of the stitching on the back');
  });

  it('names a narrower seam where the seam gives too much at the edge, and a faced edge where nothing goes', () => {
    // Derived: a hole of 2 in and a seam of 1/4 give 20% at the edge; 16% · 1 / 84% = 0.190, down to 3/16.
    expect(wordsOf({ holeDiameter: inches(2) })).toContain('A narrower binding goes: a seam of 3/16 in');
    const tiny = wordsOf({ holeDiameter: inches(3 / 4) });
    expect(tiny).toContain('No strip goes around so tight a curve with care.');
    expect(tiny).toContain('Or face the edge');
    expect(tiny).toContain(`The question “${facing.title}”`);
  });
});

it('keeps a saved answer without width and grain of the sides readable: it takes the usual width, and bias', () => {
  const { fabricWidth: _width, legGrain: _grain, ...saved } = starting();
  const read = innerBinding.input.safeParse(JSON.parse(JSON.stringify(saved)));
  expect(read.success).toBe(true);
  const result = innerBinding.calculate(read.data!);
  expect(result.ok && result.value.details.bias).toEqual(answer().details.bias);
  expect(starting().fabricWidth! / UNITS_PER_INCH).toBe(42);
});

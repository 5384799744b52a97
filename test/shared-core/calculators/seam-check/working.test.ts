import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Quantity, Step } from '#core/calculators/explanation';
import type { Measurement, SeamCheckInput } from '#core/calculators/seam-check/input';
import { seamCheck } from '#core/calculators/seam-check/seam-check';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf } from '#test/helpers/answer-of';
import { evaluateFormula } from '#test/helpers/evaluate-formula';

const inches = lengthFromInches;

const anyMeasurement: fc.Arbitrary<Measurement> = fc
  .record({
    patches: fc.integer({ min: 1, max: 9 }),
    end: fc.constantFrom('along', 'inner', 'outer'),
    off: fc.integer({ min: -2_000, max: 2_000 }),
    isMade: fc.integer({ min: 0, max: 5 }),
  })
  .map(({ patches, end, off, isMade }) => {
    const size = inches(3 * patches + 0.5);
    const found = isMade === 0 ? null : lengthFromUnits(size + off);
    return { size, seams: patches - 1, patches, end, found };
  });

/** Measurements as makers have them: nearly right, of blocks, rows and both ends of a ring. */
const anyInput: fc.Arbitrary<SeamCheckInput> = fc
  .record({
    measured: fc.array(anyMeasurement, { maxLength: 14 }),
    cutsAreRight: fc.boolean(),
    hasTop: fc.boolean(),
    hasRing: fc.boolean(),
    wedges: fc.integer({ min: 3, max: 40 }),
  })
  .map(({ measured, cutsAreRight, hasTop, hasRing, wedges }) => {
    const start = seamCheck.fromProject(SAMPLE_MEASUREMENTS);
    const ring = hasRing ? { wedges, leg: inches(26), radius: inches(29) } : null;
    return { ...start, measured, cutsAreRight, top: hasTop ? start.top : null, ring };
  });

function putIn(quantity: Quantity): number {
  if (quantity.kind === 'words' || quantity.kind === 'size') return NaN;
  return quantity.kind === 'degrees' ? (quantity.exact * Math.PI) / 180 : quantity.exact;
}

function expectComesOut({ formula, terms, result, label }: Step): void {
  const values = terms.map(({ symbol, quantity }) => [symbol, putIn(quantity)] as const);
  const value = evaluateFormula(formula, new Map(values)) ?? NaN;
  const exact = result.kind === 'words' || result.kind === 'size' ? NaN : result.exact;
  expect(Math.abs(value - exact), label).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(exact)));
  for (const { symbol } of terms) expect(formula).toContain(symbol);
}

it('of nearly right measurements comes out with the numbers beside it, and agrees with the figures', () => {
  const labels = new Set<string>();
  fc.assert(
    fc.property(anyInput, (input) => {
      const answer = seamCheck.calculate(input);
      if (!answer.ok) return;
      const { explanation, figures } = answer.value;
      for (const step of explanation) {
        expectComesOut(step);
        labels.add(step.label);
      }
      for (const { label, quantity } of figures) {
        const step = explanation.find((one) => one.label === label);
        if (step !== undefined && quantity.kind !== 'words') expect(quantity).toEqual(step.result);
      }
    }),
    { numRuns: 400 },
  );
  // Every part of the working was seen at least once.
  expect([...labels].sort()).toEqual(
    [
      'Each patch is too wide',
      'Each patch is too wide, give or take',
      'Each seam takes too much',
      'Each seam takes too much, give or take',
      'From the first to the last, more by',
      'From the first to the last, more by, give or take',
      'Measurements needed',
      'Off on each side of a seam',
      'Scatter of one patch',
      'The middle rises by',
      'The ring will measure',
      'The ring, give or take',
      'The top will measure',
      'The top, give or take',
      'The wedges lack',
      'The wedges lack, give or take',
    ].sort(),
  );
});

it('is never wider with more of the same measurements', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -200, max: 200 }), { minLength: 3, maxLength: 10 }), (offs) => {
      const start = seamCheck.fromProject(SAMPLE_MEASUREMENTS);
      const size = inches(9.5);
      const blocks = offs.map((off) => {
        return { size, seams: 2, patches: 3, end: 'along', found: lengthFromUnits(size + off) } as const;
      });
      const within = (measured: SeamCheckInput['measured']) =>
        answerOf(seamCheck, { ...start, measured, cutsAreRight: true }).details.seam!;
      const [once, twice] = [within(blocks), within([...blocks, ...blocks])];
      expect(twice.value).toBeCloseTo(once.value, 6);
      expect(twice.within).toBeLessThan(once.within);
    }),
  );
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PatternListInput, PatternPatch } from '#core/calculators/patches/pattern-list/input';
import { patternList } from '#core/calculators/patches/pattern-list/pattern-list';
import { UNITS_PER_INCH, lengthFromInches } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const inches = lengthFromInches;

function patch(
  fabric: string,
  count: number,
  width: number,
  length = width,
  cutAs: PatternPatch['cutAs'] = 'patch',
): PatternPatch {
  return { fabric, count, width: inches(width), length: inches(length), cutAs };
}

const plain: PatternListInput = {
  ...patternList.fromProject(SAMPLE_MEASUREMENTS),
  outline: { shape: 'square', side: inches(60) },
  fabricWidth: inches(42),
  bindingOverlap: inches(10),
  yardageStep: inches(4.5),
};

function detailsOf(input: Partial<PatternListInput>) {
  return answerOf(patternList, { ...plain, ...input }).details;
}

describe('the patches of a pattern', () => {
  // Derived: 16 squares of 2 1/2 in in 42 in, 3 strips, 7 1/2 in; 10 of 3 7/8 in, 12 take 2 strips, 7 3/4 in; together 15 1/4 in,
  // which is 1/2 yd from a shop that cuts eighths.
  const patches = [patch('Red', 48, 2.5), patch('Red', 12, 3.875, 3.875, 'cut-once')];

  it('take strips across the fabric', () => {
    expect(detailsOf({ patches }).fabrics).toEqual([
      { fabric: 'Red', needed: inches(15.25), stated: null, verdict: null },
    ]);
  });

  it.each([
    [0.625, 'less'],
    [0.5, 'enough'],
    [0.4375, 'enough'],
    [0.25, 'short'],
  ])('beside %s yd that the pattern asks for: %s', (yards, verdict) => {
    const stated = [{ fabric: 'red', length: inches(36 * yards) }];
    expect(detailsOf({ patches, stated }).fabrics[0]).toMatchObject({
      stated: inches(36 * yards),
      verdict,
    });
  });

  it('are said to do with less, or to need more, in the notes', () => {
    const noted = (yards: number) =>
      answerOf(patternList, {
        ...plain,
        patches,
        stated: [{ fabric: 'Red', length: inches(36 * yards) }],
      }).notes.filter(({ kind }) => kind !== 'caution');
    expect(noted(0.625).map(({ kind }) => kind)).toEqual(['tip']);
    expect(noted(0.25).map(({ kind }) => kind)).toEqual(['warning']);
    expect(noted(0.5)).toEqual([]);
  });

  it('that are triangles are counted as patches, and a strip goes across the whole fabric', () => {
    const all = [
      patch('Red', 12, 3.875, 3.875, 'cut-once'),
      patch('Red', 2, 7.25, 7.25, 'cut-twice'),
      patch('Blue', 3, 2.5, 1, 'strip'),
    ];
    const answer = answerOf(patternList, { ...plain, patches: all });
    expect(answer.figures.find(({ label }) => label === 'Patches')?.quantity).toMatchObject({
      rounded: 24 + 8 + 3,
    });
    expect(answer.details.patchList).toContainEqual({
      fabric: 'Blue',
      width: inches(42),
      length: inches(2.5),
      count: 3,
      mayTurn: true,
    });
  });

  it('never take less fabric than their area', () => {
    const anyPatch = fc
      .tuple(
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 8, max: 160 }),
        fc.integer({ min: 8, max: 160 }),
      )
      .map(([count, width, length]) => patch('Red', count, width / 8, length / 8));
    fc.assert(
      fc.property(fc.array(anyPatch, { minLength: 1, maxLength: 6 }), (any) => {
        const area = any.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
        const [fabric] = detailsOf({ patches: any }).fabrics;
        expect((fabric?.needed ?? 0) * inches(42)).toBeGreaterThanOrEqual(area);
      }),
      { numRuns: 60 },
    );
  });

  it('are refused where one fits the fabric in neither direction', () => {
    expect(refusalOf(patternList, { ...plain, patches: [patch('Red', 1, 43)] }).field).toEqual(['patches']);
  });
});

describe('the binding of a pattern', () => {
  // Derived: 4 · 60 + 10 = 250 in; 6 · 42 − 5 · 2 1/4 = 240 3/4 in, and 7 · 42 − 6 · 2 1/4 = 280 1/2 in.
  it.each([
    [6, 240.75, 1],
    [7, 280.5, 0],
  ])('of %i strips gives %s in of 250 in', (count, given, warnings) => {
    const input = { ...plain, bindingStrips: [{ width: inches(2.25), count }] };
    const answer = answerOf(patternList, input);
    expect(answer.details.binding).toEqual({
      needed: 250 * UNITS_PER_INCH,
      given: given * UNITS_PER_INCH,
      strips: count,
    });
    expect(answer.notes.filter(({ kind }) => kind === 'warning')).toHaveLength(warnings);
  });

  it('is not bought twice: its fabric is asked for by the binding stage', () => {
    const input = { ...plain, bindingStrips: [{ width: inches(2.25), count: 6 }] };
    const { details } = answerOf(patternList, input);
    expect(patternList.needs?.(input, details, inches(42))).toEqual(
      patternList.needs?.(plain, answerOf(patternList, plain).details, inches(42)),
    );
  });
});

describe('the finished size of a pattern', () => {
  it.each([
    [60, 60, 0],
    [60, 72, 1],
  ])('%i by %i in beside an outline of 60 in', (width, length, warnings) => {
    const input = { ...plain, finishedSize: [{ width: inches(width), length: inches(length) }] };
    const { notes } = answerOf(patternList, input);
    expect(notes.filter(({ kind }) => kind === 'warning')).toHaveLength(warnings);
  });

  it('may lie either way', () => {
    const input: PatternListInput = {
      ...plain,
      outline: { shape: 'rectangle', width: inches(60), length: inches(72) },
      finishedSize: [{ width: inches(72), length: inches(60) }],
    };
    expect(answerOf(patternList, input).notes.filter(({ kind }) => kind === 'warning')).toEqual([]);
  });
});

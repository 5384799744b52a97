import { describe, expect, it } from 'vitest';
import { continuousBias } from '#core/calculators/binding/continuous-bias/continuous-bias';
import {
  areaRuleLength,
  continuousBiasLength,
  planContinuousBias,
} from '#core/calculators/binding/continuous-bias/work';
import { outerBinding } from '#core/calculators/binding/outer-binding/outer-binding';
import type { OuterBindingInput } from '#core/calculators/binding/outer-binding/input';
import { stripsNeeded } from '#core/calculators/binding/strip-joins';
import { stripWidthFor } from '#core/calculators/binding/strip-width';
import { formatSentence } from '#core/calculators/format-quantity';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH, UNITS_PER_YARD } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { answerOf } from '#test/helpers/answer-of';

const inInches = (units: number) => units / UNITS_PER_INCH;

function bound(width: number, length: number, change: Partial<OuterBindingInput> = {}) {
  const outline = { shape: 'rectangle', width: inches(width), length: inches(length) } as const;
  const start = outerBinding.fromProject({
    outline,
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  });
  return answerOf(outerBinding, { ...start, ...change }).details;
}

describe('straight strips', () => {
  // Published: FP: 15 in beyond the edge. Common practice: 0, 10, 12, 20 or 24 in.
  it.each([
    [0, 8, 318.5],
    [10, 9, 358],
    [12, 9, 358],
    [15, 9, 358],
    [20, 9, 358],
    [24, 9, 358],
  ])(
    'round 70 by 86 in, 312 in and %d in over, are %d, which give %d in (derived)',
    (overlap, count, gives) => {
      const { edge, needed, strips, given } = bound(70, 86, { overlap: inches(overlap) });
      expect([edge, needed]).toEqual([inches(312), inches(312 + overlap)]);
      expect([strips, given]).toEqual([count, inches(gives)]);
    },
  );

  it('go around 63 by 87 in, a quilt for a bed of 39 by 75 in with a drop of 12 in, along 300 in (published: LES)', () => {
    expect(bound(39 + 2 * 12, 75 + 12).edge).toBe(inches(300));
  });

  // Common practice: 114 in around at 45 in is about 2 1/2 strips, half a strip for the corners makes 3, and one is spare.
  it('around a topper of 114 in are three of 45 in: a fourth would be spare', () => {
    const { strips, needed, given } = bound(27, 30, { fabricWidth: inches(45) });
    expect(stripsNeeded(114, 45, 0)).toBe(3);
    expect(strips).toBe(3);
    expect(given - needed).toBeLessThan(inches(45));
  });

  // Common practice: double fold 4 × finished + 1: 1/4 in takes 2, 3/8 takes 2 1/2; 3/4 takes 4 and 1 in takes 5.
  it('are as wide as the rule of thumb for common fronts, and wider where that no longer wraps', () => {
    const edge = { thickness: 1 / 8, cover: 1 / 8 };
    const derived = [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1].map((seam) => stripWidthFor('double', { ...edge, seam }));
    expect(derived).toEqual([2, 2.75, 3.5, 5, 6.5]);
    expect(derived[0]).toBe(4 * (1 / 4) + 1);
    expect(derived.slice(1).every((width, at) => width > 4 * [3 / 8, 1 / 2, 3 / 4, 1][at]! + 1)).toBe(true);
  });
});

describe('continuous bias beside the rule of area', () => {
  const seam = inches(1 / 4);
  const gives = (side: number, strip: number) =>
    inInches(continuousBiasLength({ side: inches(side), strip: inches(strip), seam }));
  const promised = (side: number, strip: number) =>
    inInches(areaRuleLength({ side: inches(side), strip: inches(strip) }));

  // Derived: side and strip of the rows of the table; the least and the most that is missing.
  it('is short of its promise by 6 to 17% in the sizes of the table: 165.46 in of 200 at 20 in and 2 in', () => {
    const rows = [
      [12, 2],
      [15, 2],
      [18, 2.25],
      [19, 2.5],
      [20, 2],
      [22, 2.5],
      [24, 2.25],
      [30, 2.5],
      [36, 2],
    ] as const;
    const short = rows.map(([side, strip]) => 1 - gives(side, strip) / promised(side, strip));
    expect(Math.min(...short)).toBeCloseTo(0.06, 2);
    expect(Math.max(...short)).toBeCloseTo(0.173, 3);
  });

  // Common practice: take a quarter inch off each way first: 22 in at 3 in is 21.75² ÷ 3 = 157.7 in.
  it('is still overstated by a rule that takes a quarter inch off first', () => {
    expect(promised(21.75, 3)).toBeCloseTo(157.7, 1);
    expect(gives(22, 3)).toBeLessThan(157.7);
  });

  // Common practice: 100 in at 3 1/2 in: √350 = 18.71, a square of 19 in, 0.52 yd (0.528).
  it('of 100 in at 3½ in does not come from 19 in, 0.528 yd, but from 21 in', () => {
    expect(Math.ceil(Math.sqrt(100 * 3.5))).toBe(19);
    expect(inches(19) / UNITS_PER_YARD).toBeCloseTo(0.528, 3);
    expect(gives(19, 3.5)).toBeLessThan(100);
    const need = {
      needed: inches(100),
      strip: inches(3.5),
      seam,
      squareStep: inches(1),
      largest: inches(42),
    };
    expect(planContinuousBias(need)?.side).toBe(inches(21));
  });

  it('shows what the rule of area promises, and how much that is too much', () => {
    const asked = continuousBias.fromProject({
      outline: { shape: 'square', side: inches(40) },
      hole: null,
      hasSlit: false,
      settings: STARTING_SETTINGS,
    });
    const input = { ...asked, needed: inches(260), stripWidth: inches(2.5), fabricWidth: inches(42) };
    const { details, explanation, figures, notes } = answerOf(continuousBias, input);
    expect(figures[0]).toMatchObject({
      label: 'Square to cut',
      quantity: { width: { rounded: inches(27.5) } },
    });
    // Seven rows of 27 √2 in less 2 1/2 in for the ends: 264.8 in, where 27.5² ÷ 2.5 = 302.5 in are promised.
    expect(inInches(details.gives)).toBeCloseTo(7 * 27 * Math.SQRT2 - 2.5, 6);
    expect(inInches(details.areaRule)).toBe(302.5);
    expect(details.areaRuleExcess).toBeCloseTo(302.5 / (7 * 27 * Math.SQRT2 - 2.5) - 1, 9);
    expect(
      explanation.some(({ result }) => result.kind === 'length' && result.exact === details.areaRule),
    ).toBe(true);
    const style = {
      display: { system: 'inch', inchStep: 8 },
      currency: currencyFromCode('USD'),
      locale: 'en-US',
    } as const;
    expect(notes.map((note) => formatSentence(note, style)).join(' ')).toContain(
      'promises 14.2% too much here',
    );
  });

  it('a yard’s square of 36 in at 2½ in covers 260 in with plenty over: 499.6 in with squared ends (common practice)', () => {
    // Ten rows of 35.5 √2 in, ten of 2 1/2 in being 25 in of the 25.1 in between the bias edges.
    expect(gives(36, 2.5)).toBeCloseTo(10 * 35.5 * Math.SQRT2, 6);
    expect(gives(36, 2.5) - 2.5 - 260).toBeGreaterThan(200);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LongarmPriceInput } from '#core/calculators/longarm-price/input';
import { longarmPrice } from '#core/calculators/longarm-price/longarm-price';
import { outlinePoints } from '#core/calculators/outline/outline-measures';
import type { Outline } from '#core/domain/outline';
import { type PriceLine, priceLinesSchema } from '#core/domain/price-line';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';
import { offsetByClipper } from '../patches/clipper-reference';

const HEXAGON: Outline = { shape: 'hexagon', acrossFlats: inches(48) };
const inputFor = (outline: Outline, changes: Partial<LongarmPriceInput> = {}): LongarmPriceInput => ({
  ...longarmPrice.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
  minimum: 0,
  lines: [],
  ...changes,
});
const billOf = (input: LongarmPriceInput) => answerOf(longarmPrice, input).details;
const inchesOf = (length: number) => length / UNITS_PER_INCH;

describe('the top is billed as it is sent', () => {
  it('a hexagon of 48 in is 48 1/2 by 56.003 in with its seam allowance, billed as 49 by 57 in (derived)', () => {
    const bill = billOf(inputFor(HEXAGON, { rate: 2 }));
    expect(inchesOf(bill.sentLength)).toBe(48.5);
    expect(inchesOf(bill.sentWidth)).toBeCloseTo(56.003, 4);
    expect([bill.billedLength, bill.billedWidth].map(inchesOf)).toEqual([49, 57]);
    expect(bill.quilting.exact).toBe(2_793 * 2);
  });

  it('as large as a geometry library draws it, moved out by seam and trimming', () => {
    const straight = anyOutline(12, 100).filter(({ shape }) =>
      ['square', 'rectangle', 'hexagon', 'octagon'].includes(shape),
    );
    const allowance = fc.integer({ min: 0, max: inches(2) }).map((units) => inches(0) + units);
    fc.assert(
      fc.property(straight, allowance, allowance, (outline, seam, trim) => {
        const input = longarmPrice.input.parse({
          ...inputFor(outline),
          seamAllowance: seam,
          trimming: trim,
          roundsSides: 'not-at-all',
        });
        const grown = offsetByClipper(outlinePoints(outline), seam + trim);
        const span = (along: 'x' | 'y') => {
          const places = grown.map((point) => point[along]);
          return Math.max(...places) - Math.min(...places);
        };
        const { sentWidth, sentLength, billedWidth, billedLength } = billOf(input);
        expect(Math.abs(sentWidth - span('x'))).toBeLessThan(0.1);
        expect(Math.abs(sentLength - span('y'))).toBeLessThan(0.1);
        expect(Math.abs(billedWidth - sentWidth)).toBeLessThanOrEqual(0.5);
        expect(Math.abs(billedLength - sentLength)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  it('a curve grows by the edge on every side', () => {
    const sent = { seamAllowance: inches(1 / 4), trimming: inches(2) };
    const circle = billOf(inputFor({ shape: 'circle', diameter: inches(48) }, sent));
    expect([circle.sentWidth, circle.sentLength].map(inchesOf)).toEqual([52.5, 52.5]);
  });

  it('is rounded as the quilter does it', () => {
    const sides = (roundsSides: LongarmPriceInput['roundsSides']) => {
      const bill = billOf(inputFor(HEXAGON, { roundsSides }));
      return [bill.billedWidth, bill.billedLength].map((side) => Number(inchesOf(side).toFixed(3)));
    };
    expect(sides('up')).toEqual([57, 49]);
    expect(sides('to-the-nearest')).toEqual([56, 49]);
    expect(sides('not-at-all')).toEqual([56.003, 48.5]);
  });

  it('without a seam allowance, rounded up, where an answer was saved before it was asked', () => {
    const input = inputFor(HEXAGON, { seamAllowance: inches(0) });
    const later = ['seamAllowance', 'trimming', 'roundsSides'];
    const older = Object.fromEntries(Object.entries(input).filter(([name]) => !later.includes(name)));
    expect(Object.keys(older)).toHaveLength(Object.keys(input).length - later.length);
    expect(longarmPrice.input.parse(older)).toEqual(input);
    expect(billOf(input).quilting.exact).toBe(56 * 48 * 2);
  });
});

describe('a percent line', () => {
  const rush = (of: 'quilting' | 'everything-above', name = 'Rush'): PriceLine => ({
    by: 'percent',
    name,
    percent: 10,
    of,
  });
  const thread: PriceLine = { by: 'flat', name: 'Thread', amount: 500 };
  const freight: PriceLine = { by: 'flat', name: 'Shipping', amount: 1_000 };
  const priced = (lines: readonly PriceLine[]) =>
    answerOf(longarmPrice, inputFor({ shape: 'square', side: inches(49.5) }, { rate: 4, lines }));
  const amounts = (lines: readonly PriceLine[]) => priced(lines).details.lines.map(({ minor }) => minor);

  // 50 × 50 at 4 cents is 100.00; worked out by hand.
  it('reaches the quilting, or everything above it and nothing below', () => {
    expect(amounts([thread, rush('quilting'), freight])).toEqual([500, 1_000, 1_000]);
    expect(amounts([thread, rush('everything-above'), freight])).toEqual([500, 1_050, 1_000]);
    expect(amounts([thread, freight, rush('everything-above')])).toEqual([500, 1_000, 1_150]);
  });

  it('on a percent line is of that line too, so that a tax reaches a rush charge', () => {
    expect(amounts([rush('quilting'), rush('everything-above', 'Tax')])).toEqual([1_000, 1_100]);
    const { tables, explanation } = priced([rush('quilting'), rush('everything-above', 'Tax')]);
    const ways = tables[0]!.rows.map(([, way]) => (way?.kind === 'words' ? way.text : ''));
    expect(ways.slice(1, 3)).toEqual(['percent of the quilting', 'percent of everything above']);
    const steps = explanation.filter(({ formula }) => formula === 'b × p');
    expect(steps.map(({ label, terms }) => [label, terms[0]?.means])).toEqual([
      ['Rush', 'the quilting'],
      ['Tax', 'everything above it'],
    ]);
  });

  it('saved before there was a choice reaches the quilting only', () => {
    const [read] = priceLinesSchema.parse([{ by: 'percent', name: 'Rush', percent: 25 }]);
    expect(read).toEqual({ by: 'percent', name: 'Rush', percent: 25, of: 'quilting' });
  });
});

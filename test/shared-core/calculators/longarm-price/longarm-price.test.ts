import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { LongarmPriceInput } from '#core/calculators/longarm-price/input';
import type { PriceLine } from '#core/domain/price-line';
import { longarmPrice } from '#core/calculators/longarm-price/longarm-price';
import { lengthFromInches, lengthFromMillimeters, lengthFromUnits } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';
import { writtenStep } from '#test/helpers/written-step';

const inches = lengthFromInches;
/** Sent without a seam allowance, so that a size of a test is the size of the top. */
const plain: LongarmPriceInput = {
  ...longarmPrice.fromProject(SAMPLE_MEASUREMENTS),
  seamAllowance: inches(0),
  minimum: 0,
  lines: [],
};

function rectangle(
  width: number,
  length: number,
  changes: Partial<LongarmPriceInput> = {},
): LongarmPriceInput {
  return {
    ...plain,
    outline: { shape: 'rectangle', width: inches(width), length: inches(length) },
    ...changes,
  };
}

const billOf = (input: LongarmPriceInput) => answerOf(longarmPrice, input).details;

describe('the price against figures worked out elsewhere', () => {
  // Common practice (sample rates, no tariff): 56 × 72 is 4032 sq in.
  it.each([
    [2, 8_064],
    [3, 12_096],
    [4, 16_128],
  ])('56 × 72 at %d cents per square inch is %d', (rate, minor) => {
    expect(billOf(rectangle(56, 72, { rate })).totalMinor).toBe(minor);
  });

  // Common practice: 90 × 106 is 9540 sq in: quilting 71.55, batting 19.08, together 90.63.
  it('90 × 106 at 0.0075 with batting at 0.0020 is 71.55 + 19.08 = 90.63, to the cent', () => {
    const bill = billOf(
      rectangle(90, 106, { rate: 0.75, lines: [{ by: 'area', name: 'Batting', rate: 0.2 }] }),
    );
    expect([bill.quilting.exact, bill.lines[0]?.exact, bill.totalMinor]).toEqual([7_155, 1_908, 9_063]);
    // The float trap: 9540 × 0.002 is 19.080000000000002 in binary floats.
    expect(9_540 * 0.002).not.toBe(19.08);
  });

  // Common practice: binding by its length: 256 in at 0.15 is 38.40, at 0.30 76.80; 392 in at 0.05 is 19.60, at 0.25 98.00.
  it.each([
    [56, 72, 15, 3_840],
    [56, 72, 30, 7_680],
    [90, 106, 5, 1_960],
    [90, 106, 25, 9_800],
  ])('%d × %d bound at %d cents per inch is %d', (width, length, rate, minor) => {
    const bill = billOf(
      rectangle(width, length, { rate: 0, lines: [{ by: 'edge', name: 'Binding', rate }] }),
    );
    expect(bill.lines[0]?.minor).toBe(minor);
  });

  // Common practice: 90 × 85 at 0.0185, 0.025 and 0.04.
  it.each([
    [1.85, 14_153],
    [2.5, 19_125],
    [4, 30_600],
  ])('90 × 85 at %f cents per square inch is %d', (rate, minor) => {
    expect(billOf(rectangle(90, 85, { rate })).totalMinor).toBe(minor);
  });

  // Common practice: 90 × 85 is 7650 sq in; thread flat 5.00; basting 0.005 per square inch.
  it('90 × 85 with thread and basting', () => {
    const lines: readonly PriceLine[] = [
      { by: 'flat', name: 'Thread', amount: 500 },
      { by: 'area', name: 'Basting', rate: 0.5 },
    ];
    const bill = billOf(rectangle(90, 85, { rate: 0, lines }));
    expect(bill.lines.map(({ minor }) => minor)).toEqual([500, 3_825]);
  });

  it('charges the minimum when the area costs less, and says so', () => {
    const small = answerOf(longarmPrice, rectangle(20, 20, { rate: 2, minimum: 6_000 }));
    expect(small.details).toMatchObject({ isAtMinimum: true, totalMinor: 6_000 });
    expect(small.notes.some(({ says }) => says.includes('minimum'))).toBe(true);
    const even = answerOf(longarmPrice, rectangle(60, 50, { rate: 2, minimum: 6_000 }));
    expect(even.details).toMatchObject({ isAtMinimum: false, totalMinor: 6_000 });
    expect(even.notes.some(({ says }) => says.includes('minimum'))).toBe(false);
  });

  it('takes a percent line of the quilting as charged', () => {
    const lines: readonly PriceLine[] = [{ by: 'percent', name: 'Rush', percent: 25, of: 'quilting' }];
    expect(billOf(rectangle(20, 20, { minimum: 6_000, lines })).lines[0]?.minor).toBe(1_500);
  });
});

describe('billing by the bounding rectangle', () => {
  it('bills a circle as its square and a hexagon as its rectangle, sides up to the next inch (common practice)', () => {
    const circle = billOf({ ...plain, outline: { shape: 'circle', diameter: inches(39.5) } });
    expect(circle.quilting.exact).toBe(40 * 40 * 2);
    const hexagon = billOf({ ...plain, outline: { shape: 'hexagon', acrossFlats: inches(48) } });
    expect(hexagon.quilting.exact).toBe(56 * 48 * 2);
    const finer = billOf({
      ...plain,
      outline: { shape: 'circle', diameter: inches(39.5) },
      measureUpTo: inches(1 / 2),
    });
    expect(finer.quilting.exact).toBe(39.5 * 39.5 * 2);
  });

  it('shows the area in square inches however large it is, and the rate in cents', () => {
    const { explanation } = answerOf(longarmPrice, rectangle(90, 106, { rate: 1.5 }));
    const [, , area, quilting] = explanation.map((step) => writtenStep(step));
    expect(area).toBe('Area billed, in square inches: W = 90 in, L = 106 in: 9540');
    expect(quilting).toBe('Quilting: area = 9540, rate = 1.5, minimum = $0.00: $143.10');
  });

  it('explains the rectangle only for outlines that are not rectangles', () => {
    const says = (input: LongarmPriceInput) =>
      answerOf(longarmPrice, input).notes.some((note) => note.says.includes('rectangle'));
    expect(says(plain)).toBe(true);
    expect(says(rectangle(40, 50))).toBe(false);
    expect(says({ ...plain, outline: { shape: 'square', side: inches(40) } })).toBe(false);
  });
});

const rates = fc.integer({ min: 0, max: 10_000_000 }).map((millionths) => millionths / 1e6);
const anyLine: fc.Arbitrary<PriceLine> = fc.oneof(
  fc.record({
    by: fc.constant('flat' as const),
    name: fc.constant('flat'),
    amount: fc.integer({ min: 0, max: 50_000 }),
  }),
  fc.record({ by: fc.constant('area' as const), name: fc.constant('area'), rate: rates }),
  fc.record({ by: fc.constant('edge' as const), name: fc.constant('edge'), rate: rates }),
  fc.record({
    by: fc.constant('percent' as const),
    name: fc.constant('percent'),
    percent: fc.integer({ min: 0, max: 200 }),
    of: fc.constantFrom('quilting', 'everything-above'),
  }),
);
const anyPrice: fc.Arbitrary<LongarmPriceInput> = fc
  .record({
    outline: anyOutline(8, 130),
    roundsSides: fc.constantFrom('up', 'to-the-nearest'),
    rate: rates,
    minimum: fc.integer({ min: 0, max: 20_000 }),
    lines: fc.array(anyLine, { maxLength: 8 }),
  })
  .map((changes) => ({ ...plain, ...changes }));

describe('a bill', () => {
  it('agrees to the cent with exact fractions, halves away from zero', () => {
    fc.assert(
      fc.property(anyPrice, (input) => {
        const bill = billOf(input);
        const [width, length] = [bill.billedWidth / 8_128, bill.billedLength / 8_128];
        const millionths = (rate: number) => new Fraction(Math.round(rate * 1e6), 1_000_000);
        const byArea = millionths(input.rate).mul(width * length);
        const quilting = byArea.compare(input.minimum) < 0 ? new Fraction(input.minimum) : byArea;
        const rounded = (exact: Fraction) => exact.add(1, 2).floor().valueOf();
        expect(bill.quilting.minor).toBe(rounded(quilting));
        let above = bill.quilting.minor;
        const lines = input.lines.map((line) => {
          const minor = lineOf(
            line,
            line.by === 'percent' && line.of === 'quilting' ? bill.quilting.minor : above,
          );
          above += minor;
          return minor;
        });
        function lineOf(line: PriceLine, base: number): number {
          if (line.by === 'flat') return rounded(new Fraction(line.amount));
          if (line.by === 'area') return rounded(millionths(line.rate).mul(width * length));
          if (line.by === 'edge') return rounded(millionths(line.rate).mul(2 * (width + length)));
          return rounded(new Fraction(line.percent, 100).mul(base));
        }
        expect(bill.lines.map(({ minor }) => minor)).toEqual(lines);
      }),
      { numRuns: 300 },
    );
  });

  it('adds up: the total is the sum of its printed lines', () => {
    fc.assert(
      fc.property(anyPrice, (input) => {
        const { details, tables } = answerOf(longarmPrice, input);
        const amounts = tables[0]!.rows.map((row) => (row[2]?.kind === 'money' ? row[2].rounded : NaN));
        const total = amounts.pop();
        expect(total).toBe(details.totalMinor);
        expect(amounts.reduce((sum, minor) => sum + minor, 0)).toBe(total);
      }),
    );
  });

  it('never falls as the quilt, the rate or the minimum grows', () => {
    fc.assert(
      fc.property(anyPrice, fc.integer({ min: 0, max: 20 * 8_128 }), (input, more) => {
        const total = billOf(input).totalMinor;
        expect(billOf({ ...input, rate: input.rate + 1 }).totalMinor).toBeGreaterThanOrEqual(total);
        expect(billOf({ ...input, minimum: input.minimum + 1_000 }).totalMinor).toBeGreaterThanOrEqual(total);
        if (input.outline.shape !== 'square') return;
        const larger = { shape: 'square', side: lengthFromUnits(input.outline.side + more) } as const;
        expect(billOf({ ...input, outline: larger }).totalMinor).toBeGreaterThanOrEqual(total);
      }),
    );
  });
});

describe('the weight of the package', () => {
  it('is area by weight: one square meter of top with no overhang and no seams', () => {
    const square: LongarmPriceInput = {
      ...plain,
      outline: { shape: 'square', side: lengthFromMillimeters(1_000) },
      overhang: inches(0),
      fabricWeight: 150,
      battingWeight: 200,
      seamExtraPercent: 0,
      packing: 300,
    };
    expect(billOf(square)).toMatchObject({
      topGrams: 150,
      backingGrams: 150,
      battingGrams: 200,
      packageGrams: 800,
    });
    expect(billOf({ ...square, seamExtraPercent: 36 }).topGrams).toBeCloseTo(204, 9);
    const overhung = billOf({ ...square, overhang: lengthFromMillimeters(100) });
    expect(overhung.backingGrams).toBeCloseTo(150 * 1.44, 9);
    expect(overhung.topGrams).toBe(150);
  });

  it('counts a round top by its own area and its backing by the rectangle', () => {
    const circle = billOf({
      ...plain,
      outline: { shape: 'circle', diameter: lengthFromMillimeters(1_000) },
      overhang: inches(0),
      seamExtraPercent: 0,
    });
    expect(circle.topGrams / circle.backingGrams).toBeCloseTo(Math.PI / 4, 12);
  });

  it('is the sum of its parts, and the shares are a whole', () => {
    fc.assert(
      fc.property(anyPrice, (input) => {
        const { details, tables } = answerOf(longarmPrice, input);
        const { topGrams, backingGrams, battingGrams, packageGrams } = details;
        expect(topGrams + backingGrams + battingGrams + input.packing).toBeCloseTo(packageGrams, 9);
        const shares = tables[1]!.rows
          .slice(0, 4)
          .map((row) => (row[2]?.kind === 'percent' ? row[2].exact : NaN));
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 9);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fabricWidth } from '#core/calculators/fabric-width/fabric-width';
import type { FabricWidthInput } from '#core/calculators/fabric-width/input';
import {
  type Length,
  lengthFromInches,
  lengthFromUnits,
  UNITS_PER_METER,
  UNITS_PER_YARD,
} from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const inches = lengthFromInches;
const yards = (count: number) => lengthFromUnits(count * UNITS_PER_YARD);
const plain = fabricWidth.fromProject(SAMPLE_MEASUREMENTS);

function conversion(
  length: number,
  from: number,
  to: number,
  changes: Partial<FabricWidthInput> = {},
): FabricWidthInput {
  return { ...plain, length: yards(length), fromWidth: inches(from), toWidth: inches(to), ...changes };
}

const boughtYards = (input: FabricWidthInput) => answerOf(fabricWidth, input).details.toBuy / UNITS_PER_YARD;
const chartYards = (input: FabricWidthInput) =>
  answerOf(fabricWidth, input).details.byChart! / UNITS_PER_YARD;

// Published: RUT, a fabric width conversion chart.
const COLUMNS: readonly (readonly number[])[] = [
  [35, 36],
  [39],
  [41],
  [44, 45],
  [50],
  [52, 54],
  [58, 60],
  [66],
];
const CHART: readonly (readonly number[])[] = [
  [1.75, 1.5, 1.5, 1.375, 1.25, 1.125, 1, 0.875],
  [2, 1.75, 1.75, 1.625, 1.5, 1.375, 1.25, 1.125],
  [2.5, 2.25, 2.25, 2.125, 1.75, 1.75, 1.625, 1.5],
  [2.875, 2.5, 2.5, 2.25, 2, 1.875, 1.75, 1.625],
  [3.375, 3, 2.875, 2.75, 2.375, 2.25, 2, 1.875],
  [3.75, 3.25, 3.125, 2.875, 2.625, 2.375, 2.25, 2.125],
  [4.5, 3.75, 3.625, 3.375, 3, 2.75, 2.625, 2.5],
  [4.75, 4, 3.875, 3.625, 3.25, 2.875, 2.75, 2.625],
  [5, 4.25, 4.125, 3.875, 3.375, 3.125, 2.875, 2.75],
];

describe('the published chart', () => {
  it('is looked up for every entry, from every column to every other', () => {
    for (const row of CHART) {
      for (const [from, length] of row.entries()) {
        for (const [to, answer] of row.entries()) {
          for (const fromWidth of COLUMNS[from]!) {
            for (const toWidth of COLUMNS[to]!)
              expect(chartYards(conversion(length, fromWidth, toWidth))).toBe(answer);
          }
        }
      }
    }
  });

  it.each([
    [1.375, 54, 36, 2],
    [2, 60, 45, 2.75],
    [2.875, 54, 60, 2.75],
  ])('turns %d yd of %d in into %d in fabric as printed', (length, from, to, answer) => {
    expect(chartYards(conversion(length, from, to))).toBe(answer);
  });

  // A slip met in print reads the 45 in column: 2 1/4 yd for 2 7/8 yd of 54 in fabric to 60 in.
  it('does not read the neighboring column', () => {
    expect(chartYards(conversion(2.875, 54, 60))).not.toBe(2.25);
  });

  it('is for garments and only compares: it differs from the area rule by up to half a yard, often below it', () => {
    const differences = CHART.flatMap((row) =>
      row.flatMap((length, from) =>
        [...row.keys()].map((to) => {
          const input = conversion(length, COLUMNS[from]!.at(-1)!, COLUMNS[to]!.at(-1)!);
          const { byChart, byArea, toBuy } = answerOf(fabricWidth, input).details;
          expect(toBuy).toBeGreaterThanOrEqual(byArea - 1e-6);
          return byChart! / UNITS_PER_YARD - Math.ceil((byArea / UNITS_PER_YARD) * 8 - 1e-9) / 8;
        }),
      ),
    );
    expect(differences.some((difference) => difference < 0)).toBe(true);
    expect(Math.max(...differences.map(Math.abs))).toBe(0.5);
  });

  it('does not make a longer length take less fabric', () => {
    const bought = [58, 58.5, 59].map((length) => boughtYards(conversion(length / 36, 60, 36)));
    expect(bought).toEqual(bought.toSorted((one, other) => one - other));
  });
});

describe('fabric the chart does not have', () => {
  it.each([
    ['a length between rows', conversion(1.875, 45, 60)],
    ['a width between columns', conversion(2, 36, 55)],
    ['a width before the columns', conversion(2, 30, 45)],
    ['a length beyond the rows', conversion(9, 36, 45)],
  ])('goes by area for %s', (_what, input) => {
    const { details, notes } = answerOf(fabricWidth, input);
    expect(details.byChart).toBeNull();
    expect(notes.length).toBe(1);
    const area = (input.length * input.fromWidth) / input.toWidth;
    expect(details.toBuy - area).toBeGreaterThanOrEqual(-1e-6);
    expect(details.toBuy - area).toBeLessThan(input.yardageStep);
  });

  it('keeps the area, exactly and both ways', () => {
    fc.assert(
      fc.property(width, width, length, (fromWidth, toWidth, asked) => {
        const input = { ...plain, length: asked, fromWidth, toWidth, yardageStep: lengthFromUnits(320) };
        const { byArea } = answerOf(fabricWidth, input).details;
        expect((byArea * toWidth) / (asked * fromWidth)).toBeCloseTo(1, 12);
        const back = answerOf(fabricWidth, {
          ...input,
          length: lengthFromUnits(Math.ceil(byArea)),
          fromWidth: toWidth,
          toWidth: fromWidth,
        });
        expect(back.details.byArea).toBeGreaterThanOrEqual(asked - 1e-6);
      }),
    );
  });

  it('never takes less for a longer length, or more of a wider fabric', () => {
    fc.assert(
      fc.property(width, width, length, (fromWidth, toWidth, asked) => {
        const at = (one: Length, to: Length) =>
          answerOf(fabricWidth, { ...plain, length: one, fromWidth, toWidth: to }).details.byArea;
        expect(at(lengthFromUnits(asked + 320), toWidth)).toBeGreaterThan(at(asked, toWidth));
        expect(at(asked, lengthFromUnits(toWidth + 320))).toBeLessThan(at(asked, toWidth));
      }),
    );
  });
});

const width = fc.integer({ min: 20 * 8_128, max: 110 * 8_128 }).map(lengthFromUnits);
const length = fc.integer({ min: 8_128, max: 20 * UNITS_PER_METER }).map(lengthFromUnits);

describe('one-way fabric', () => {
  // Published: RUT, whose note adds a quarter of a yard.
  it('adds a quarter of a yard to the area rule', () => {
    expect(boughtYards(conversion(2, 60, 45, { isOneWay: true }))).toBe(3);
    expect(boughtYards(conversion(9, 36, 36, { isOneWay: true }))).toBe(9.25);
    const labels = answerOf(fabricWidth, conversion(2, 60, 45, { isOneWay: true })).explanation.map(
      ({ label }) => label,
    );
    expect(labels).toEqual(['By area', 'By a published chart for garments', 'With a one-way print']);
  });

  it('refuses fabric so narrow that a kilometer would not be enough', () => {
    const most = {
      length: lengthFromUnits(100 * UNITS_PER_METER),
      fromWidth: inches(130),
      toWidth: inches(4),
    };
    expect(refusalOf(fabricWidth, { ...plain, ...most })).toMatchObject({
      code: 'too-long',
      field: ['toWidth'],
    });
  });
});

import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { Outline } from '#core/domain/outline';
import type { MachineThreadInput } from '#core/calculators/machine-thread/input';
import { machineThread } from '#core/calculators/machine-thread/machine-thread';
import {
  lengthFromInches,
  lengthFromMillimeters,
  lengthFromUnits,
  UNITS_PER_METER,
} from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { writtenStep } from '#test/helpers/written-step';

const inches = lengthFromInches;
const millimeters = lengthFromMillimeters;
const plain: MachineThreadInput = { ...machineThread.fromProject(SAMPLE_MEASUREMENTS), wastePercent: 0 };
const detailsOf = (changes: Partial<MachineThreadInput>) =>
  answerOf(machineThread, { ...plain, ...changes }).details;

describe('machine thread against figures worked out elsewhere', () => {
  // Published: stitch type 301 takes 2.5 (CARR).
  // Common practice: a 220 cm seam takes 550, half from needle and half from bobbin.
  it('takes 550 cm for 220 cm of lockstitch, 275 from each side', () => {
    expect(plain.factor).toBe(2.5);
    const { byFactor } = detailsOf({ seamLength: millimeters(2_200) });
    expect([byFactor.total, byFactor.needle, byFactor.bobbin].map((units) => units / 3_200)).toEqual([
      550, 275, 275,
    ]);
  });

  // Published: C = 2 + 2TS, TXC: T 0.01 and S 10 give 2.2; T 0.025 and S 10 give 2.5.
  it.each([
    [0.01, 2.2],
    [0.025, 2.5],
  ])('a seam %d in thick at ten stitches per inch takes %d', (thickness, factor) => {
    const changes = {
      thickness: lengthFromUnits(Math.round(thickness * 8_128)),
      stitchLength: millimeters(2.54),
    };
    expect(detailsOf(changes).byStitch.factor).toBeCloseTo(factor, 2);
  });

  // Published: waste of 10 to 15% (APS), 15 to 20% (APM): 540 cm with 15% is 621.
  it('adds waste: 540 cm with 15% is 621', () => {
    const { byFactor } = detailsOf({ seamLength: millimeters(2_160), wastePercent: 15 });
    expect(byFactor.total / 3_200).toBeCloseTo(621, 9);
  });

  // Common practice: stitches per inch are 25.4 over the stitch in mm: 2.5 mm is 10.16.
  // 12 per inch are 2.117 mm (one page prints 2.11), 15 are 1.69.
  it.each([
    [2.5, 10.16, 2],
    [2.117, 12, 1],
    [1.69, 15, 1],
  ])('a stitch of %d mm is %d per inch', (length, perInch, digits) => {
    const step = answerOf(machineThread, { ...plain, stitchLength: millimeters(length) }).explanation.find(
      ({ formula }) => formula === '2 + 2 × T × N',
    )!;
    const stitches = step.terms.find(({ symbol }) => symbol === 'N')!.quantity;
    expect(stitches.kind === 'number' && stitches.exact).toBeCloseTo(perInch, digits);
  });
});

const anyThread: fc.Arbitrary<MachineThreadInput> = fc.record({
  seamLength: fc.integer({ min: 8_128, max: 100 * UNITS_PER_METER }).map(lengthFromUnits),
  factor: fc.integer({ min: 200, max: 400 }).map((hundredths) => hundredths / 100),
  wastePercent: fc.integer({ min: 0, max: 50 }),
  stitchLength: fc.integer({ min: 320, max: 1_600 }).map(lengthFromUnits),
  thickness: fc.integer({ min: 32, max: 640 }).map(lengthFromUnits),
  bobbinHolds: fc.integer({ min: 320_000, max: 100 * UNITS_PER_METER }).map(lengthFromUnits),
});

describe('thread and bobbins', () => {
  it('agree with exact fractions, and bobbins are counted up', () => {
    fc.assert(
      fc.property(anyThread, (input) => {
        const { byFactor, byStitch, bobbins } = answerOf(machineThread, input).details;
        const waste = new Fraction(100 + input.wastePercent, 100);
        const total = new Fraction(Math.round(input.factor * 100), 100).mul(waste).mul(input.seamLength);
        expect(byFactor.total / total.valueOf()).toBeCloseTo(1, 12);
        const perStitch = new Fraction(2 * input.thickness, input.stitchLength)
          .add(2)
          .mul(waste)
          .mul(input.seamLength);
        expect(byStitch.total / perStitch.valueOf()).toBeCloseTo(1, 12);
        const more = total.compare(perStitch) > 0 ? total : perStitch;
        expect(bobbins).toBe(more.div(2).div(input.bobbinHolds).ceil().valueOf());
        expect(byFactor.needle + byFactor.bobbin).toBe(byFactor.total);
      }),
    );
  });

  it('never fall as the seam, the waste or the thickness grows, or as stitches get shorter', () => {
    fc.assert(
      fc.property(anyThread, (input) => {
        const base = answerOf(machineThread, input).details;
        const grown: readonly Partial<MachineThreadInput>[] = [
          { seamLength: lengthFromUnits(input.seamLength + 8_128) },
          { wastePercent: Math.min(50, input.wastePercent + 5) },
          { thickness: lengthFromUnits(input.thickness + 100) },
          { stitchLength: lengthFromUnits(input.stitchLength - 50) },
        ];
        for (const changes of grown) {
          const more = answerOf(machineThread, { ...input, ...changes }).details;
          expect(more.byFactor.total).toBeGreaterThanOrEqual(base.byFactor.total);
          expect(more.byStitch.total).toBeGreaterThanOrEqual(base.byStitch.total);
          expect(more.bobbins).toBeGreaterThanOrEqual(base.bobbins);
        }
      }),
    );
  });

  it('suffice by both methods, so the bobbins to wind are never fewer than either asks for', () => {
    const { figures, tables } = answerOf(machineThread, {
      ...machineThread.fromProject(SAMPLE_MEASUREMENTS),
      seamLength: lengthFromUnits(150 * UNITS_PER_METER),
    });
    expect(figures[0]?.quantity).toMatchObject({ kind: 'count', rounded: 8 });
    expect(tables[0]?.rows.map((row) => row.at(-1))).toMatchObject([{ rounded: 4 }, { rounded: 8 }]);
  });

  it('start with the binding, sewn on once around, and show both methods side by side', () => {
    const seamFor = (outline: Outline) => {
      return machineThread.fromProject({ ...SAMPLE_MEASUREMENTS, outline }).seamLength;
    };
    expect(seamFor(SAMPLE_MEASUREMENTS.outline) / 8_128).toBeCloseTo(48 * 2 * Math.sqrt(3), 3);
    expect(seamFor({ shape: 'square', side: inches(1 / 64) })).toBe(inches(1));
    const long = Array.from({ length: 60 }, () => lengthFromUnits(10 * UNITS_PER_METER));
    const huge = { shape: 'sides', sides: long, width: inches(90), length: inches(90) } as const;
    expect(seamFor(huge)).toBe(150 * UNITS_PER_METER);
    const { tables } = answerOf(machineThread, plain);
    expect(tables[0]!.rows.map((row) => row[0])).toEqual([
      { kind: 'words', text: 'By the factor' },
      { kind: 'words', text: 'By stitch and thickness' },
    ]);
  });

  it('shows the thread on a bobbin in yards', () => {
    const input = machineThread.fromProject(SAMPLE_MEASUREMENTS);
    const bobbins = answerOf(machineThread, input).explanation.find(
      ({ label }) => label === 'Bobbins to wind',
    )!;
    expect(writtenStep(bobbins)).toContain('h = 60 yd');
  });

  it('refuse more than a kilometer by either method, and warn of the needle', () => {
    const endless = {
      seamLength: lengthFromUnits(150 * UNITS_PER_METER),
      thickness: inches(0.25),
      stitchLength: millimeters(0.5),
    };
    expect(refusalOf(machineThread, { ...plain, ...endless })).toMatchObject({
      code: 'too-much-thread',
      field: ['seamLength'],
    });
    const largest = {
      seamLength: lengthFromUnits(150 * UNITS_PER_METER),
      factor: 4,
      wastePercent: 50,
      thickness: millimeters(0.1),
    };
    expect(machineThread.calculate({ ...plain, ...largest }).ok).toBe(true);
    expect(answerOf(machineThread, plain).notes[0]).toMatchObject({ kind: 'caution' });
  });
});

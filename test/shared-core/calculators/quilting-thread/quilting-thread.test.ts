import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { machineThread } from '#core/calculators/machine-thread/machine-thread';
import type { QuiltingThreadInput } from '#core/calculators/quilting-thread/input';
import { quiltingThread } from '#core/calculators/quilting-thread/quilting-thread';
import { type Length, lengthFromInches as inches, lengthFromUnits, UNITS_PER_YARD } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const plain = quiltingThread.fromProject(SAMPLE_MEASUREMENTS);
const rectangle = (width: number, length: number, change: Partial<QuiltingThreadInput> = {}) => ({
  ...plain,
  outline: { shape: 'rectangle' as const, width: inches(width), length: inches(length) },
  ...change,
});
const detailsOf = (input: QuiltingThreadInput) => answerOf(quiltingThread, input).details;
const yards = (units: number) => units / UNITS_PER_YARD;
const anyInches = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: inches(least), max: inches(most) }).map(lengthFromUnits);
const anyInput: fc.Arbitrary<QuiltingThreadInput> = fc
  .record({
    side: anyInches(6, 130),
    density: fc.constantFrom('light', 'medium', 'heavy', 'by-spacing'),
    spacing: anyInches(1 / 4, 6),
    factor: fc.integer({ min: 200, max: 400 }).map((hundredths) => hundredths / 100),
    wastePercent: fc.integer({ min: 0, max: 30 }),
    bobbins: fc.constantFrom('wound-from-the-cone', 'bought-wound'),
  })
  .map(({ side, ...rest }) => ({ ...plain, outline: { shape: 'square', side }, ...rest }));

describe('quilting thread in print', () => {
  // Published: NL06, a thread maker's yards on top by light, medium and heavy quilting, and the same again in the bobbin.
  it.each([
    ['crib', 45, 60, [200, 400, 600]],
    ['twin', 72, 90, [400, 800, 1_200]],
    ['queen', 90, 108, [600, 1_100, 1_600]],
    ['king', 120, 120, [700, 1_300, 2_000]],
  ] as const)('for a %s of %d by %d in is as printed', (_, width, length, printed) => {
    const needle = (['light', 'medium', 'heavy'] as const).map((density) => {
      const { chosen } = detailsOf(rectangle(width, length, { density }));
      expect(chosen.bobbin).toBe(chosen.needle);
      return yards(chosen.needle);
    });
    needle.forEach((value, index) => expect(value).toBeCloseTo(printed[index]!, 6));
  });

  // Derived from the same print: medium takes 192, 160, 147 and 117 yd for a square yard, so it does not grow with the area.
  it.each([
    [45, 60, 192],
    [72, 90, 160],
    [90, 108, 147],
    [120, 120, 117],
  ])('takes for %d by %d in %d yd on top for a square yard', (width, length, rate) => {
    const { chosen, area } = detailsOf(rectangle(width, length, { density: 'medium' }));
    expect(Math.round(yards(chosen.needle) / (area / UNITS_PER_YARD ** 2))).toBe(rate);
  });

  // Known slip: a page divides square inches by 144 and by 10.7, which gives 2.55 sq yd for 74 by 53 in. A square yard has 9 square feet.
  it('counts 3.03 sq yd in 74 by 53 in', () => {
    expect(detailsOf(rectangle(74, 53)).area / UNITS_PER_YARD ** 2).toBeCloseTo(3.03, 2);
  });

  // Derived: half way in area between crib (2 1/12 sq yd) and twin (5 sq yd) takes half way between 400 and 800 yd.
  it('is read in proportion between two sizes, and below the smallest and beyond the largest by area', () => {
    const middle = detailsOf(rectangle(36, ((2_700 + 6_480) / 2 / 1_296) * 36, { density: 'medium' }));
    expect(yards(middle.chosen.needle)).toBeCloseTo(600, 3);
    const small = detailsOf(rectangle(22.5, 30, { density: 'medium' }));
    expect(yards(small.chosen.needle)).toBeCloseTo(100, 6);
    const large = detailsOf(rectangle(120, 180, { density: 'light' }));
    expect(yards(large.chosen.needle)).toBeCloseTo(1_050, 6);
  });

  // Published: HIC, a prewound bobbin of size L holds 130 to 154 yd; so 1,100 yd in the bobbin of a queen are eight or nine of them.
  it.each([
    [130, 9],
    [154, 8],
  ])('of a queen fills bobbins of %d yd: %d', (holds, count) => {
    const input = rectangle(90, 108, { density: 'medium', bobbinHolds: inches(holds * 36) });
    const bobbins = answerOf(quiltingThread, input).figures.find(({ label }) => label === 'Bobbins');
    expect(bobbins?.quantity).toMatchObject({ kind: 'count', rounded: count });
  });
});

describe('thread for lines of a spacing', () => {
  // Derived: 36 by 36 in with lines 1/2 in apart are 72 lines of 36 in, 72 yd, which take 2.5 times that: 180 yd, half on top.
  it('is the lines of the area times the take-up', () => {
    const input = rectangle(36, 36, {
      density: 'by-spacing',
      spacing: inches(1 / 2),
      wastePercent: 0,
      thickness: lengthFromUnits(100),
    });
    const { chosen, lineLength } = detailsOf(input);
    expect([lineLength, chosen.total, chosen.needle].map(yards)).toEqual([72, 180, 90]);
  });

  it('is what the machine takes for a seam of that length, so take-up has one rule', () => {
    fc.assert(
      fc.property(anyInches(6, 60), anyInches(1 / 2, 6), (side, spacing) => {
        const input = {
          ...plain,
          outline: { shape: 'square', side } as const,
          density: 'by-spacing',
          spacing,
        } as const;
        const { lines, lineLength } = detailsOf(input);
        const seamLength = lengthFromUnits(Math.round(lineLength));
        const seam = machineThread.calculate({ ...input, seamLength });
        if (!seam.ok) return;
        const { enough } = seam.value.details;
        expect(lines.enough.total / enough.total).toBeCloseTo(1, 4);
        expect(lines.enough.needle + lines.enough.bobbin).toBe(lines.enough.total);
      }),
    );
  });

  it('agrees with exact fractions and with lines laid one by one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 16 }),
        fc.integer({ min: 0, max: 30 }),
        (bands, eighths, wastePercent) => {
          const spacing = inches(eighths / 8);
          const width = lengthFromUnits(bands * spacing);
          if (width < inches(6)) return;
          const outline = { shape: 'rectangle' as const, width, length: inches(20) };
          const input = { ...plain, outline, spacing, wastePercent, density: 'by-spacing' as const };
          let laid = 0;
          for (let at = spacing / 2; at < width; at += spacing) laid += inches(20);
          const { lines, lineLength } = detailsOf(input);
          expect(lineLength).toBeCloseTo(laid, 3);
          const exact = new Fraction(laid).mul(new Fraction(5, 2)).mul(new Fraction(100 + wastePercent, 100));
          expect(lines.byFactor.total / exact.valueOf()).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});

describe('cones and bobbins', () => {
  it('hold the thread, none too many, and the shopping list asks for the same', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const answer = quiltingThread.calculate(input);
        if (!answer.ok) return;
        const { figures, details } = answer.value;
        const count = (label: string) => {
          const quantity = figures.find((one) => one.label === label)?.quantity;
          return quantity?.kind === 'count' ? quantity.rounded : Number.NaN;
        };
        const isBought = input.bobbins === 'bought-wound';
        const fromCone = isBought ? details.chosen.needle : details.chosen.total;
        expect(count('Cones') * input.coneHolds).toBeGreaterThanOrEqual(fromCone - 1);
        expect((count('Cones') - 1) * input.coneHolds).toBeLessThan(fromCone);
        expect(count('Bobbins') * input.bobbinHolds).toBeGreaterThanOrEqual(details.chosen.bobbin - 1);
        expect((count('Bobbins') - 1) * input.bobbinHolds).toBeLessThan(details.chosen.bobbin);
        const asked = quiltingThread.needs!(input, details, inches(42)).map(({ amount }) =>
          amount.measure === 'thread' ? amount.length : Number.NaN,
        );
        expect(asked).toEqual(isBought ? [fromCone, details.chosen.bobbin] : [fromCone]);
      }),
    );
  });

  it('never fall for a larger quilt, closer lines or denser quilting', () => {
    fc.assert(
      fc.property(anyInput, anyInches(0, 10), (input, more) => {
        const total = (one: QuiltingThreadInput) => {
          const answer = quiltingThread.calculate(one);
          return answer.ok ? answer.value.details.chosen.total : Number.POSITIVE_INFINITY;
        };
        const { outline } = input;
        if (outline.shape !== 'square') return;
        const larger = { ...input, outline: { ...outline, side: lengthFromUnits(outline.side + more) } };
        expect(total(larger)).toBeGreaterThanOrEqual(total(input));
        const closer = { ...input, spacing: lengthFromUnits(input.spacing - 320) };
        expect(total(closer)).toBeGreaterThanOrEqual(total(input));
        const [light, medium, heavy] = (['light', 'medium', 'heavy'] as const).map((density) =>
          total({ ...input, density }),
        );
        expect(light).toBeLessThanOrEqual(medium!);
        expect(medium).toBeLessThanOrEqual(heavy!);
      }),
    );
  });

  it('stand in a table beside the spacing at which your own lines take as much', () => {
    const input = rectangle(60, 70);
    const row = answerOf(quiltingThread, input).tables[0]!.rows[1]!;
    const [, spacing, needle] = row;
    if (spacing?.kind !== 'length' || needle?.kind !== 'length') throw new Error('No lengths');
    const again = detailsOf({ ...input, density: 'by-spacing', spacing: spacing.rounded });
    expect(again.chosen.needle / needle.exact).toBeCloseTo(1, 3);
  });

  it('are refused beyond ten kilometers, and come with the caution for the needle', () => {
    expect(refusalOf(quiltingThread, rectangle(390, 390)).field).toEqual(['outline']);
    const close = rectangle(90, 108, { spacing: inches(1 / 16) });
    expect(refusalOf(quiltingThread, close)).toMatchObject({ code: 'too-much-thread', field: ['spacing'] });
    expect(answerOf(quiltingThread, plain).notes[0]).toMatchObject({ kind: 'caution' });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculation } from '#core/calculators/calculator';
import type { LengthQuantity, Quantity, Sentence } from '#core/calculators/explanation';
import {
  formatExactQuantity,
  formatInline,
  formatQuantity,
  type QuantityStyle,
} from '#core/calculators/format-quantity';
import { calculators } from '#core/calculators/registry';
import { UNITS_PER_INCH, UNITS_PER_METER } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import type { InchStep, LengthDisplay } from '#core/units/unit-system';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { anyInputOf } from '#test/helpers/any-input';

const PER_UNIT: Readonly<Record<string, number>> = {
  in: UNITS_PER_INCH,
  yd: 36 * UNITS_PER_INCH,
  mm: 320,
  cm: 3_200,
  m: UNITS_PER_METER,
};
const EIGHTHS = { '½': ' 4/8', '¼': ' 2/8', '¾': ' 6/8', '⅛': ' 1/8', '⅜': ' 3/8', '⅝': ' 5/8', '⅞': ' 7/8' };

/** What a person reads back from the paper: the sum of the whole number and the fraction, times the unit. */
function readBack(text: string): number {
  const plain = Object.entries(EIGHTHS).reduce(
    (said, [character, part]) => said.replace(character, part),
    text,
  );
  const words = plain.replace('−', '').trim().split(/ +/);
  const perUnit = PER_UNIT[words.at(-1)!];
  if (perUnit === undefined) throw new Error(`Not a length: ${text}`);
  const size = words.slice(0, -1).reduce((sum, word) => {
    const [numerator, denominator = '1'] = word.split('/');
    return sum + Number(numerator) / Number(denominator);
  }, 0);
  return (text.startsWith('−') ? -size : size) * perUnit;
}

const displays: readonly LengthDisplay[] = [
  ...([4, 8, 16] as const).map((inchStep: InchStep) => ({ system: 'inch', inchStep }) as const),
  { system: 'metric', inchStep: 8 },
];
const stepOf = ({ system, inchStep }: LengthDisplay) => (system === 'inch' ? UNITS_PER_INCH / inchStep : 320);

const lengthsOf = (quantity: Quantity): readonly LengthQuantity[] =>
  quantity.kind === 'length' ? [quantity] : quantity.kind === 'size' ? [quantity.width, quantity.length] : [];

/** Lengths that are printed with their exact value beside them. */
function withExact({ figures, explanation }: Calculation): readonly LengthQuantity[] {
  return [...figures.map(({ quantity }) => quantity), ...explanation.map(({ result }) => result)].flatMap(
    lengthsOf,
  );
}

/** Lengths that are printed alone: in tables, terms and notes. */
function alone({ tables, explanation, notes }: Calculation): readonly LengthQuantity[] {
  const cells = tables.flatMap(({ rows }) => rows.flat());
  const terms = explanation.flatMap((step) => step.terms.map(({ quantity }) => quantity));
  const said = notes.flatMap(({ values }: Sentence) => Object.values(values));
  return [...cells, ...terms, ...said].flatMap(lengthsOf);
}

function style(display: LengthDisplay): QuantityStyle {
  return { display, currency: currencyFromCode('USD'), locale: 'en-US' };
}

/** A hundredth of a millimeter, the last decimal of an exact value, and one unit of whole rounding. */
const LAST_DECIMAL = 4;

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  'lengths of %s',
  (_name, calculator) => {
    it('read back as the value, or have the exact one beside them, and are rounded as they say', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), fc.constantFrom(...displays), (raw, display) => {
          const input = calculator.input.safeParse(raw);
          if (!input.success) return;
          const answer = calculator.calculate(input.data);
          if (!answer.ok) return;
          for (const quantity of withExact(answer.value)) {
            const shown = readBack(formatQuantity(quantity, style(display)));
            const isOff = Math.abs(shown - quantity.exact) > stepOf(display) / 4;
            if (isOff) expect(formatExactQuantity(quantity, style(display))).not.toBeNull();
            expectDirection(quantity, shown);
          }
          for (const quantity of alone(answer.value)) {
            const shown = readBack(formatInline(quantity, style(display)));
            if (quantity.use !== 'yardage')
              expect(Math.abs(shown - quantity.rounded)).toBeLessThanOrEqual(
                stepOf(display) / 4 + LAST_DECIMAL,
              );
            expectDirection(quantity, shown);
          }
        }),
        {
          numRuns: 60,
          examples: displays.map((display): [unknown, LengthDisplay] => [
            calculator.fromProject(SAMPLE_MEASUREMENTS),
            display,
          ]),
        },
      );
    });
  },
);

function expectDirection({ rounded, rounding }: LengthQuantity, shown: number): void {
  if (rounding === 'up') expect(shown).toBeGreaterThanOrEqual(rounded - 1e-6);
  if (rounding === 'down') expect(shown).toBeLessThanOrEqual(rounded + 1e-6);
}

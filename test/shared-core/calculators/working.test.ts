import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculation, Calculator } from '#core/calculators/calculator';
import { answerCalculator } from '#core/calculators/complete-input';
import type { Quantity, Step } from '#core/calculators/explanation';
import { calculators } from '#core/calculators/registry';
import { UNITS_PER_INCH, UNITS_PER_MILLIMETER } from '#core/units/length';
import { anyInputOf } from '#test/helpers/any-input';
import { evaluateFormula } from '#test/helpers/evaluate-formula';
import { anyMeasurements } from '#test/helpers/measurements';

/** Said in words, or over more values than a line has room for; every other formula is worked out again here. */
const IN_WORDS: readonly string[] = [
  'looked up, not calculated',
  'the widest row',
  'the larger of area × rate and the minimum',
  'P = ∮ √(dx² + dy²)',
  'P = a₁ + a₂ + … + aₙ',
  'S = ℓ₁ + ℓ₂ + … + ℓₙ',
  'the smallest change of one length alone',
  '(A + B + C + D) ÷ 4',
  'the average of the corners',
  'the center of the circle nearest to the points',
  'the point where the shape balances',
  'where the creases cross',
  '|X − M|',
  'shorter side · |cos α|, at the worst corner',
  'D = shortest distance from the center of the hole to a side',
  'edge − 2d × Σ 1 ÷ tan(a/2) over its corners; edge − 2πd for a curve',
  '2 × (from the edge to the hole)',
  'the sum of its parts',
];

/** Which values stand rounded in a formula: whole things mostly, lengths where the rounded one is used on. */
interface Rounded {
  readonly lengths: boolean;
  readonly counts: boolean;
}

const WAYS: readonly Rounded[] = [
  { lengths: false, counts: true },
  { lengths: true, counts: true },
  { lengths: false, counts: false },
];

const SQUARE_METER = (1_000 * UNITS_PER_MILLIMETER) ** 2;

/** In the units the formula is meant in: lengths in inches where a bare number comes out, areas in m² where a weight does. */
function putIn(quantity: Quantity, result: Quantity, { lengths, counts }: Rounded): number {
  switch (quantity.kind) {
    case 'words':
    case 'size':
      return NaN;
    case 'count':
      return counts ? quantity.rounded : quantity.exact;
    case 'percent':
      return quantity.exact / 100;
    case 'degrees':
      return (quantity.exact * Math.PI) / 180;
    case 'area':
      return quantity.exact / SQUARE_METER;
    case 'length': {
      const length = lengths ? quantity.rounded : quantity.exact;
      return result.kind === 'number' ? length / UNITS_PER_INCH : length;
    }
    case 'minutes':
    case 'money':
    case 'weight':
    case 'number':
      return quantity.exact;
  }
}

function comesOut(step: Step, value: number): boolean {
  const { result, formula, terms } = step;
  if (result.kind === 'words' || result.kind === 'size') return false;
  const isPercent = result.kind === 'percent' && !formula.startsWith('100 ×');
  const isAngle = result.kind === 'degrees' && (/°|asin|atan/.test(formula) || terms.some(isDegrees));
  const scale = isPercent ? 100 : result.kind === 'minutes' ? 60 : isAngle ? 180 / Math.PI : 1;
  const given = formula.endsWith('or nothing') && !(value > 0) ? 0 : scale * value;
  const isNear = Math.abs(given - result.exact) <= 1e-9 * Math.max(1, Math.abs(result.exact));
  if (isNear || result.kind !== 'count') return isNear;
  return (
    formula.endsWith('rounded up, at least one') && Math.max(1, Math.ceil(value - 1e-9)) === result.rounded
  );
}

const isDegrees = ({ quantity }: Step['terms'][number]) => quantity.kind === 'degrees';

/** Null where the working adds up; else the line that does not. */
function faultOf(step: Step): string | null {
  const { formula, terms, result } = step;
  if (IN_WORDS.includes(formula)) return null;
  const worked = WAYS.map((rounded) => {
    const values = terms.map(({ symbol, quantity }) => [symbol, putIn(quantity, result, rounded)] as const);
    return evaluateFormula(formula, new Map(values));
  });
  const idle = terms.filter(({ symbol }) => !formula.includes(symbol));
  if (idle.length === 0 && worked.some((value) => value !== null && comesOut(step, value))) return null;
  return JSON.stringify({ worked, step });
}

function expectWorking({ explanation }: Calculation): void {
  for (const step of explanation) expect(faultOf(step)).toBeNull();
}

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  'the working of %s',
  (_name, calculator: Calculator) => {
    it('comes out when its formulas are worked out with the numbers beside them, for any project', () => {
      fc.assert(
        fc.property(anyMeasurements, (measurements) => {
          const answer = answerCalculator(calculator, measurements, {});
          if (answer.ok) expectWorking(answer.value.calculation);
        }),
        { numRuns: 60 },
      );
    });

    it('comes out for whatever its input lets through', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), (raw) => {
          const input = calculator.input.safeParse(raw);
          const answer = input.success ? calculator.calculate(input.data) : null;
          if (answer?.ok === true) expectWorking(answer.value);
        }),
        { numRuns: 150 },
      );
    });
  },
);

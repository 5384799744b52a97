import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '#core/calculators/calculator';
import { calculators } from '#core/calculators/registry';
import { lengthFromInches } from '#core/units/length';
import { anyInputOf } from '#test/helpers/any-input';
import { anyMeasurements } from '#test/helpers/measurements';
import {
  contradictions,
  cutsWithoutAnswer,
  figuresWithoutWorking,
  needsWithoutFigure,
} from '#test/helpers/one-value';

/**
 * Figures that follow from what is said beside them, so that no step works them out: what is left or missing, a share of a
 * whole, what is counted on the drawing, the size of the piece that the maker entered. Their own tests hold them.
 */
const WITHOUT_WORKING: Readonly<Record<string, readonly string[]>> = {
  'patch-size': ['Finished', 'Finishes at', 'Unfinished size', 'Rotary cuts, one layer at a time'],
  'fussy-cutting': ['Patches from the length at hand', 'Patches across the fabric'],
  'quilting-thread': ['Area of the quilt'],
  'center-find': ['The creases cross at', 'The methods differ by', 'Longest and shortest side differ by'],
  'wedge-ring': ['Corners reach beyond the circle by', 'A true arc rises above its chord by'],
  'seam-check': ['One patch is usually within', 'Scatter, at least', 'Scatter, at most'],
  backing: ['Extra on each panel to match the print'],
  'scrappy-binding': ['Strips used, in your order'],
  'hole-size': ['Radius, for a turning ruler', 'Edge of the hole, all the way around'],
  'center-clearance': ['The seam line leaves the patch by', 'Seams it crosses'],
  'inner-binding': ['Number of squares'],
  'continuous-bias': ['Left over'],
  'bias-strips': ['Left over', 'Short by', 'Shortest length of this width that is enough'],
  'prairie-points': ['Height of a point'],
  ruffle: ['Fullness at the seam'],
  'hand-finish': ['Your time is worth'],
};

function expectOneValue(calculator: Calculator, input: object): void {
  const answer = calculator.calculate(input);
  if (!answer.ok) return;
  const { value: calculation } = answer;
  const whole = {
    calculation,
    needs: calculator.needs?.(input, calculation.details, lengthFromInches(42)) ?? [],
    cuts: calculator.cuts?.(input, calculation.details) ?? [],
  };
  expect(contradictions(whole)).toEqual([]);
  const known = WITHOUT_WORKING[calculator.name] ?? [];
  expect(figuresWithoutWorking(whole).filter((label) => !known.includes(label))).toEqual([]);
  expect(needsWithoutFigure(whole)).toEqual([]);
  if ('needs' in calculator) expect(cutsWithoutAnswer(whole)).toEqual([]);
}

/**
 * Two parts of one unit in one fabric: equal patches of both are cut as one, and their number is a sum that the answer does not
 * print. The tests of the unit's fabrics hold that sum.
 */
function namesOneFabricTwice(input: object): boolean {
  if (!('unit' in input) || typeof input.unit !== 'object' || input.unit === null) return false;
  const names = Object.entries(input.unit).flatMap(([field, name]) =>
    field.endsWith('Fabric') && name !== '' ? [String(name).trim()] : [],
  );
  return new Set(names).size < names.length;
}

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  'figures, working, tables, shopping list and cutting list of %s',
  (_name, calculator) => {
    it('are one value for any project', () => {
      fc.assert(
        fc.property(anyMeasurements, (measurements) => {
          expectOneValue(calculator, calculator.fromProject(measurements));
        }),
        { numRuns: 40 },
      );
    });

    it('are one value for whatever its input lets through', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), (raw) => {
          const input = calculator.input.safeParse(raw);
          if (input.success && !namesOneFabricTwice(input.data)) expectOneValue(calculator, input.data);
        }),
        { numRuns: 100 },
      );
    });
  },
);

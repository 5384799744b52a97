import { outlineBounds } from '../outline/outline-measures';
import type { LengthQuantity, Quantity, Step } from '../explanation';
import { areaQuantity, countQuantity, lengthUp, percentQuantity, yardageUp } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { BattingInput } from './input';
import type { BattingDetails, FittingPackage, RollCut } from './work';

/** One side of the sheet to cut, rounded up. */
export function sideOf(input: BattingInput, exact: number): LengthQuantity {
  return lengthUp(exact + 2 * input.overhang, input.cutStep);
}

/** With the extra, rounded up to what shops cut. */
export function offTheRoll(
  { safetyExtraPercent, yardageStep }: BattingInput,
  { rollLength }: RollCut,
): Quantity {
  return yardageUp(rollLength * (1 + safetyExtraPercent / 100), yardageStep);
}

export function battingSteps(input: BattingInput, { packages, rolls }: BattingDetails): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const side = (label: string, symbol: string, exact: number): Step => ({
    label,
    formula: `${symbol} + 2 × o`,
    terms: [
      term(symbol, 'side of the top', lengthUp(exact)),
      givenTerm('o', 'overhang on each side', input.overhang),
    ],
    result: sideOf(input, exact),
    rule: commonPractice('Backing and batting reach past the top on every side; the frame needs it.'),
  });
  const [[smallest], [best]] = [packages, rolls];
  return [
    side('Width of the batting', 'W', bounds.width),
    side('Length of the batting', 'L', bounds.length),
    ...(smallest === undefined ? [] : [packageStep(input, smallest)]),
    ...(best === undefined ? [] : [rollStep(input, best)]),
  ];
}

function packageStep(input: BattingInput, smallest: FittingPackage): Step {
  const bounds = outlineBounds(input.outline);
  return {
    label: 'Left over from the package',
    formula: 'a × b − W × L',
    terms: [
      givenTerm('a', 'one side of the package', smallest.width),
      givenTerm('b', 'its other side', smallest.length),
      term('W', 'width of the batting', sideOf(input, bounds.width)),
      term('L', 'length of the batting', sideOf(input, bounds.length)),
    ],
    result: areaQuantity(smallest.spare),
    rule: commonPractice('The package that covers, turned if need be, with the least left over.'),
  };
}

function rollStep(input: BattingInput, roll: RollCut): Step {
  return {
    label: 'By the yard',
    formula: 'n × l × (1 + e), rounded up to what shops cut',
    terms: [
      term('n', 'widths side by side', countQuantity(roll.widths, ['width', 'widths'])),
      givenTerm('l', 'length of each', roll.each),
      term('e', 'safety extra', percentQuantity(input.safetyExtraPercent)),
    ],
    result: offTheRoll(input, roll),
    rule: derived('Batting is joined edge to edge, so widths side by side add up in full.'),
  };
}

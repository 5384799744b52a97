import { outlineBounds } from '../outline/outline-measures';
import type { LengthQuantity, Quantity, Step } from '../explanation';
import { areaQuantity, countQuantity, givenLength, lengthQuantity, percentQuantity } from '../quantities';
import type { BattingDetails, RollCut } from './work';
import type { BattingInput } from './input';

/** One side of the sheet to cut, rounded up. */
export function sideOf(input: BattingInput, exact: number): LengthQuantity {
  return lengthQuantity(exact + 2 * input.overhang, { step: input.cutStep, direction: 'up' });
}

/** With the extra, up to what the shop sells. */
export function offTheRoll(
  { safetyExtraPercent, yardageStep }: BattingInput,
  { rollLength }: RollCut,
): Quantity {
  const exact = rollLength * (1 + safetyExtraPercent / 100);
  return lengthQuantity(exact, { step: yardageStep, direction: 'up', use: 'yardage' });
}

export function battingSteps(input: BattingInput, { packages, rolls }: BattingDetails): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const side = (label: string, symbol: string, exact: number): Step => ({
    label,
    formula: `${symbol} + 2 × o`,
    terms: [
      { symbol, means: 'side of the top', quantity: lengthQuantity(exact, { direction: 'up' }) },
      { symbol: 'o', means: 'overhang on each side', quantity: givenLength(input.overhang) },
    ],
    result: sideOf(input, exact),
    rule: {
      kind: 'common practice',
      says: 'Backing and batting reach beyond the top on every side; the frame needs it.',
    },
  });
  return [
    side('Width of the batting', 'W', bounds.width),
    side('Length of the batting', 'L', bounds.length),
    ...packages.slice(0, 1).map((one): Step => ({
      label: 'Left over of the package',
      formula: 'a × b − W × L',
      terms: [
        { symbol: 'a', means: 'one side of the package', quantity: givenLength(one.width) },
        { symbol: 'b', means: 'its other side', quantity: givenLength(one.length) },
        { symbol: 'W', means: 'width of the batting', quantity: sideOf(input, bounds.width) },
        { symbol: 'L', means: 'length of the batting', quantity: sideOf(input, bounds.length) },
      ],
      result: areaQuantity(one.spare),
      rule: {
        kind: 'common practice',
        says: 'The package that covers, either way round, with the least left over.',
      },
    })),
    ...rolls.slice(0, 1).map((roll): Step => ({
      label: 'Off the roll',
      formula: 'n × l × (1 + e), up to what the shop sells',
      terms: [
        {
          symbol: 'n',
          means: 'widths side by side',
          quantity: countQuantity(roll.widths, ['width', 'widths']),
        },
        { symbol: 'l', means: 'length of each', quantity: givenLength(roll.each) },
        { symbol: 'e', means: 'safety extra', quantity: percentQuantity(input.safetyExtraPercent) },
      ],
      result: offTheRoll(input, roll),
      rule: {
        kind: 'derived',
        says: 'Batting is joined edge to edge, so widths side by side add up in full.',
      },
    })),
  ];
}

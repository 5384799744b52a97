import { lengthFromUnits } from '#core/units/length';
import type { Step } from '#core/calculators/explanation';
import { countQuantity, givenLength, numberQuantity, yardageUp } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import type { FussyCuttingInput } from './input';
import type { FussyCuttingDetails } from './work';

export function fussyCuttingSteps(input: FussyCuttingInput, details: FussyCuttingDetails): readonly Step[] {
  const { across, rows, cutWidth, cutLength, stepAcross, stepAlong, fabricLength } = details;
  return [
    {
      label: 'Rows',
      formula: 'n ÷ a, rounded up',
      terms: [
        term('n', 'patches', numberQuantity(input.count)),
        term('a', 'patches across the fabric', numberQuantity(across)),
      ],
      result: countQuantity(input.count / across, ['row', 'rows'], 'up'),
      rule: derived(
        'A row is sure to hold as many whole figures as fit when the first begins almost a whole repeat in.',
      ),
    },
    {
      label: 'Width that a row takes',
      formula: 'q + (a − 1) × p + w',
      terms: [
        givenTerm('q', 'print repeat across', input.repeatAcross),
        term('a', 'patches across the fabric', numberQuantity(across)),
        givenTerm('p', 'from patch to patch, in whole repeats', stepAcross),
        givenTerm('w', 'cut width of a patch', cutWidth),
      ],
      result: givenLength(rowWidth(input, details)),
      rule: derived('It is within the usable width of the fabric; one patch more would not be.'),
    },
    {
      label: 'Fabric needed',
      formula: 'r + (k − 1) × s + l',
      terms: [
        givenTerm('r', 'print repeat along', input.repeatAlong),
        term('k', 'rows', numberQuantity(rows)),
        givenTerm('s', 'from row to row, in whole repeats', stepAlong),
        givenTerm('l', 'cut length of a patch', cutLength),
      ],
      result: givenLength(fabricLength),
      rule: commonPractice('One repeat more, since a length is cut from the bolt anywhere in the print.'),
    },
    {
      label: 'Fabric to buy',
      formula: 'fabric, rounded up to what shops cut',
      terms: [givenTerm('fabric', 'fabric needed', fabricLength)],
      result: yardageUp(fabricLength, input.yardageStep),
      rule: commonPractice('Shops cut by an eighth of a yard or by 5 cm.'),
    },
  ];
}

function rowWidth(
  { repeatAcross }: FussyCuttingInput,
  { across, stepAcross, cutWidth }: FussyCuttingDetails,
) {
  return lengthFromUnits(repeatAcross + (across - 1) * stepAcross + cutWidth);
}

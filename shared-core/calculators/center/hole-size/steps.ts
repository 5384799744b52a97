import { lengthFromExact } from '#core/units/length';
import type { Explanation, Quantity, Table } from '#core/calculators/explanation';
import {
  fineLength,
  lengthDown,
  lengthNearest,
  lengthQuantity,
  lengthUp,
} from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm } from '#core/calculators/working/terms';
import { type HoleSizeInput, isMeasured, rulerRounding } from './input';
import type { HoleSizeDetails } from './work';

/** The nearest ruler sizes, and the room that each leaves around the thing that goes through. */
export function rulerTable(input: HoleSizeInput, { exactDiameter }: HoleSizeDetails): Table {
  const above = lengthFromExact(exactDiameter, 'up', input.rulerStep);
  const through = isMeasured(input) ? exactDiameter - input.ease : exactDiameter;
  const sizes = [above - 2 * input.rulerStep, above - input.rulerStep, above, above + input.rulerStep];
  return {
    title: 'Nearest sizes of your circle ruler',
    columns: ['Diameter', 'Radius', isMeasured(input) ? 'Room on each side' : 'Larger by', 'Edge'],
    rows: sizes
      .filter((size) => size > 0)
      .map((size): readonly Quantity[] => [
        lengthNearest(size),
        fineLength(size / 2, 'down'),
        lengthDown(isMeasured(input) ? (size - through) / 2 : size - through),
        lengthUp(Math.PI * size),
      ]),
  };
}

/** From the measured size to the hole and the seam line of its binding. */
export function holeSizeSteps(input: HoleSizeInput, details: HoleSizeDetails): Explanation {
  const ease = givenTerm('e', 'ease', input.ease);
  const measured =
    input.from === 'around'
      ? givenTerm('C', 'measured around', input.measure)
      : givenTerm('d', 'diameter', input.measure);
  return [
    {
      label: 'Hole diameter',
      formula: input.from === 'around' ? 'D = C ÷ π + e' : isMeasured(input) ? 'D = d + e' : 'D = d',
      terms: isMeasured(input) ? [measured, ease] : [measured],
      result: lengthQuantity(details.exactDiameter, rulerRounding(input)),
      rule: isMeasured(input)
        ? derived('The thing that goes through plus room around it, rounded up to a size of your ruler.')
        : commonPractice('Your own size, taken as it is.'),
    },
    {
      label: 'Seam line of its binding',
      formula: 'π(D + 2s)',
      terms: [
        givenTerm('D', 'hole diameter', details.diameter),
        givenTerm('s', 'seam allowance', input.seamAllowance),
      ],
      result: lengthUp(details.seamLine),
      rule: derived('The binding is stitched one seam allowance outside the cut edge.'),
    },
  ];
}

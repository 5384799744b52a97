import { UNITS_PER_INCH } from '#core/units/length';
import type { Quantity, Step } from '../explanation';
import { givenLength, numberQuantity, percentQuantity, yardageUp } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { MachineThreadInput } from './input';
import type { ThreadByMethod } from './work';

export function threadSteps(
  input: MachineThreadInput,
  { byFactor, byStitch }: ThreadByMethod,
  bobbins: Quantity,
): readonly Step[] {
  return [
    {
      label: 'Total thread',
      formula: 'S × f × (1 + e)',
      terms: [
        term('S', 'length of seam', givenLength(input.seamLength, 'yardage')),
        term('f', 'thread per length of seam', numberQuantity(input.factor)),
        term('e', 'waste', percentQuantity(input.wastePercent)),
      ],
      result: yardageUp(byFactor.total),
      rule: commonPractice(
        'Textbooks give 2.5 times the length of the seam for a lockstitch (stitch type 301 in ISO 4915).',
      ),
    },
    {
      label: 'From the bobbin',
      formula: 'thread ÷ 2',
      terms: [term('thread', 'in total', yardageUp(byFactor.total))],
      result: yardageUp(byFactor.bobbin),
      rule: commonPractice('A balanced lockstitch takes as much from the bobbin as from the needle.'),
    },
    {
      label: 'Bobbins to wind',
      formula: 'B ÷ h, rounded up',
      terms: [
        term('B', 'from the bobbin', yardageUp(byFactor.bobbin)),
        term('h', 'thread on one bobbin', givenLength(input.bobbinHolds, 'yardage')),
      ],
      result: bobbins,
      rule: derived('A bobbin you start counts as a whole one.'),
    },
    {
      label: 'The second method: thread per length of seam',
      formula: '2 + 2 × T × N',
      terms: [
        givenTerm('T', 'thickness of the seam, in inches', input.thickness),
        term('N', 'stitches per inch', numberQuantity(UNITS_PER_INCH / input.stitchLength)),
      ],
      result: numberQuantity(byStitch.factor),
      rule: derived(
        'Thread runs along both faces of the seam, and both threads together go through its thickness twice at each stitch.',
      ),
    },
  ];
}

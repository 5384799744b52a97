import { UNITS_PER_INCH } from '#core/units/length';
import type { Quantity, Rule, Step, Term } from '../explanation';
import { givenLength, numberQuantity, percentQuantity, yardageUp } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { MachineThreadInput } from './input';
import type { ThreadByMethod, ThreadUse } from './work';

export function threadSteps(
  input: MachineThreadInput,
  { byFactor, byStitch, enough }: ThreadByMethod,
  bobbins: Quantity,
): readonly Step[] {
  const total = (label: string, factor: Term, use: ThreadUse, rule: Rule): Step => ({
    label,
    formula: `S × ${factor.symbol} × (1 + e)`,
    terms: [
      term('S', 'length of seam', givenLength(input.seamLength, 'yardage')),
      factor,
      term('e', 'waste', percentQuantity(input.wastePercent)),
    ],
    result: yardageUp(use.total),
    rule,
  });
  const given = term('f', 'thread per length of seam', numberQuantity(input.factor));
  const worked = term('g', 'thread per length of seam', numberQuantity(byStitch.factor));
  return [
    total('Thread by the factor', given, byFactor, TEXTBOOK),
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
    total('Thread by stitch and thickness', worked, byStitch, derived('The same with its own factor.')),
    {
      label: 'From the bobbin',
      formula: 'thread ÷ 2',
      terms: [term('thread', 'by the method that takes more', yardageUp(enough.total))],
      result: yardageUp(enough.bobbin),
      rule: commonPractice('A balanced lockstitch takes as much from the bobbin as from the needle.'),
    },
    {
      label: 'Bobbins to wind',
      formula: 'B ÷ h, rounded up',
      terms: [
        term('B', 'from the bobbin', yardageUp(enough.bobbin)),
        term('h', 'thread on one bobbin', givenLength(input.bobbinHolds, 'yardage')),
      ],
      result: bobbins,
      rule: derived('A bobbin you start counts as a whole one.'),
    },
  ];
}

const TEXTBOOK = commonPractice(
  'Textbooks give 2.5 times the length of the seam for a lockstitch (stitch type 301 in ISO 4915).',
);

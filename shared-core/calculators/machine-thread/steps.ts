import { type Length, UNITS_PER_INCH } from '#core/units/length';
import type { Quantity, Rule, Step, Term } from '../explanation';
import { givenLength, numberQuantity, percentQuantity, yardageUp } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { MachineThreadInput } from './input';
import type { ThreadByMethod, ThreadUse } from './work';

export function threadSteps(
  input: MachineThreadInput,
  use: ThreadByMethod,
  bobbins: Quantity,
): readonly Step[] {
  const seam = givenLength(input.seamLength, 'yardage');
  return [...seamThreadSteps(input, seam, use), bobbinStep(use.enough, input.bobbinHolds, bobbins)];
}

/** Thread for a seam by both methods, and the half of it from the bobbin. */
export function seamThreadSteps(
  input: Pick<MachineThreadInput, 'wastePercent' | 'factor' | 'stitchLength' | 'thickness'>,
  seam: Quantity,
  { byFactor, byStitch, enough }: ThreadByMethod,
): readonly Step[] {
  const total = (label: string, factor: Term, use: ThreadUse, rule: Rule): Step => ({
    label,
    formula: `S × ${factor.symbol} × (1 + e)`,
    terms: [
      term('S', 'length of seam', seam),
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
  ];
}

export function bobbinStep({ bobbin }: Pick<ThreadUse, 'bobbin'>, holds: Length, bobbins: Quantity): Step {
  return {
    label: 'Bobbins to wind',
    formula: 'B ÷ h, rounded up',
    terms: [
      term('B', 'from the bobbin', yardageUp(bobbin)),
      term('h', 'thread on one bobbin', givenLength(holds, 'yardage')),
    ],
    result: bobbins,
    rule: derived('A bobbin you start counts as a whole one.'),
  };
}

const TEXTBOOK = commonPractice(
  'Textbooks give 2.5 times the length of the seam for a lockstitch (stitch type 301 in ISO 4915).',
);

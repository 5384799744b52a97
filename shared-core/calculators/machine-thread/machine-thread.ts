import { failure, type Result, success } from '#core/result';
import { KILOMETER_UNITS } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import { cautionNotes } from '../caution-notes';
import type { Note, Table } from '../explanation';
import { threadNeed } from '../needs';
import { countQuantity, givenLength, numberQuantity, wordsQuantity, yardageUp } from '../quantities';
import { type MachineThreadInput, machineThreadInput, machineThreadInputFromProject } from './input';
import { threadSteps } from './steps';
import { type ThreadByMethod, type ThreadUse, threadUse } from './work';

interface MachineThreadDetails extends ThreadByMethod {
  readonly bobbins: number;
}

/** Thread for a length of lockstitch seam, from needle and bobbin, and the bobbins to wind. */
export const machineThread: Calculator<MachineThreadInput, MachineThreadDetails> = {
  name: 'machine-thread',
  version: 2,
  title: 'Machine thread',
  question: 'How much thread does the machine use, and how many bobbins?',
  stageKinds: ['piecing', 'home-quilting', 'outer-binding', 'inner-binding'],
  input: machineThreadInput,
  fromProject: machineThreadInputFromProject,
  calculate: calculateMachineThread,
  needs: (_, { enough }) => [threadNeed('Thread', enough.total)],
};

function calculateMachineThread(
  input: MachineThreadInput,
): Result<Calculation<MachineThreadDetails>, Refusal> {
  const use = threadUse(input);
  if (use.enough.total > KILOMETER_UNITS) return failure(refuseEndlessThread(input));
  const bobbins = countQuantity(use.enough.bobbin / input.bobbinHolds, ['bobbin', 'bobbins'], 'up');
  return success({
    figures: [
      { label: 'Bobbins to wind', quantity: bobbins },
      { label: 'Total thread', quantity: yardageUp(use.enough.total) },
      { label: 'From the spool', quantity: yardageUp(use.enough.needle) },
      { label: 'From the bobbin', quantity: yardageUp(use.enough.bobbin) },
    ],
    tables: [compareTable(input, use.byFactor, use.byStitch)],
    explanation: threadSteps(input, use, bobbins),
    notes: NOTES,
    diagram: null,
    details: { ...use, bobbins: bobbins.rounded },
  });
}

function refuseEndlessThread({ seamLength }: MachineThreadInput): Refusal {
  return {
    code: 'too-much-thread',
    field: ['seamLength'],
    says: 'A seam of {seam} would take more than 1 km of thread. Work it out in parts.',
    values: { seam: givenLength(seamLength, 'yardage') },
  };
}

function compareTable(input: MachineThreadInput, byFactor: ThreadUse, byStitch: ThreadUse): Table {
  const row = (name: string, { factor, total, bobbin }: ThreadUse) => [
    wordsQuantity(name),
    numberQuantity(factor),
    yardageUp(total),
    yardageUp(bobbin),
    countQuantity(bobbin / input.bobbinHolds, ['bobbin', 'bobbins'], 'up'),
  ];
  return {
    title: 'Two methods compared',
    columns: ['Method', 'Thread per length of seam', 'Total', 'From the bobbin', 'Bobbins'],
    rows: [row('By the factor', byFactor), row('By stitch and thickness', byStitch)],
  };
}

const NOTES: readonly Note[] = [
  ...cautionNotes('machineNeedle'),
  {
    kind: 'tip',
    says: 'Stitch length and thickness change the amount far more than tension does. Wind all the bobbins before you start, plus one more.',
    values: {},
  },
];

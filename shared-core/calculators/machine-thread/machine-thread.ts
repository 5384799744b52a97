import { failure, type Result, success } from '#core/result';
import { MAX_LENGTH_UNITS } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Note, Quantity, Table } from '../explanation';
import { threadNeed } from '../needs';
import { countQuantity, lengthQuantity, numberQuantity, wordsQuantity } from '../quantities';
import { type MachineThreadInput, machineThreadInput, machineThreadInputFromProject } from './input';
import { threadSteps, threadUse, type ThreadUse } from './work';

/** In 1/320 mm, as doubles before rounding. */
export interface MachineThreadDetails {
  readonly byFactor: ThreadUse;
  readonly byStitch: ThreadUse;
  readonly bobbins: number;
}

/** Thread for a length of lockstitch seam, from the needle and from the bobbin, and how many bobbins to wind. */
export const machineThread: Calculator<MachineThreadInput, MachineThreadDetails> = {
  name: 'machine-thread',
  version: 1,
  title: 'Machine thread',
  question: 'How much thread does the machine take, and how many bobbins?',
  stageKinds: ['piecing', 'home-quilting', 'outer-binding', 'inner-binding'],
  input: machineThreadInput,
  fromProject: machineThreadInputFromProject,
  calculate: calculateMachineThread,
  needs: (_, { byFactor }) => [threadNeed('Thread', byFactor.total)],
};

function calculateMachineThread(
  input: MachineThreadInput,
): Result<Calculation<MachineThreadDetails>, Refusal> {
  const use = threadUse(input);
  if (Math.max(use.byFactor.total, use.byStitch.total) > MAX_LENGTH_UNITS)
    return failure(refuseEndlessThread(input));
  const bobbins = countQuantity(use.byFactor.bobbin / input.bobbinHolds, ['bobbin', 'bobbins'], 'up');
  return success({
    figures: [
      { label: 'Bobbins to wind', quantity: bobbins },
      { label: 'Thread in all', quantity: thread(use.byFactor.total) },
      { label: 'From the spool', quantity: thread(use.byFactor.needle) },
      { label: 'From the bobbin', quantity: thread(use.byFactor.bobbin) },
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
    says: 'a seam of {seam} would take more than a kilometer of thread: work it out in parts.',
    values: { seam: lengthQuantity(seamLength, { direction: 'nearest', use: 'yardage' }) },
  };
}

/** Bought by length, so never too little. */
function thread(exact: number): Quantity {
  return lengthQuantity(exact, { direction: 'up', use: 'yardage' });
}

function compareTable(input: MachineThreadInput, byFactor: ThreadUse, byStitch: ThreadUse): Table {
  const row = (name: string, { factor, total, bobbin }: ThreadUse) => [
    wordsQuantity(name),
    numberQuantity(factor),
    thread(total),
    thread(bobbin),
    countQuantity(bobbin / input.bobbinHolds, ['bobbin', 'bobbins'], 'up'),
  ];
  return {
    title: 'Two ways to reckon it',
    columns: ['Way', 'Thread for one length of seam', 'In all', 'From the bobbin', 'Bobbins'],
    rows: [row('By the factor', byFactor), row('By stitch and thickness', byStitch)],
  };
}

const NOTES: readonly Note[] = [
  {
    kind: 'caution',
    says: 'Take your foot off the pedal, or switch the machine off, before you thread it or change needle or bobbin; keep fingers clear of the needle.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Stitch length and thickness change what is used far more than tension does. Wind the bobbins before you begin, and one more.',
    values: {},
  },
];

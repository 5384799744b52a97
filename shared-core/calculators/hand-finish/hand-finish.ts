import { failure, type Result, success } from '#core/result';
import { lengthFromInches } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import type { Calculation, Calculator, Refusal } from '../calculator';
import { cautionNotes } from '../caution-notes';
import type { Note, Table } from '../explanation';
import { threadNeed } from '../needs';
import { countQuantity, givenLength, lengthUp, moneyQuantity, wordsQuantity } from '../quantities';
import { handDiagram } from './diagram';
import { lengthSteps, minutesFor, PART_NAMES, workSteps } from './steps';
import { type HandFinishInput, handFinishInput, handFinishInputFromProject } from './input';
import { type HandSewnPart, handSewnParts } from './work';

interface HandFinishDetails {
  readonly parts: readonly HandSewnPart[];
  /** In 1/320 mm, the sum of the parts. */
  readonly length: number;
  readonly minutes: number;
  readonly stitches: number;
  /** Needlefuls of thread. */
  readonly threads: number;
}

/** How much there is to sew by hand on the back, and the hours and thread it takes. */
export const handFinish: Calculator<HandFinishInput, HandFinishDetails> = {
  name: 'hand-finish',
  version: 1,
  title: 'Hand finish',
  question: 'How long does it take to sew the binding down by hand?',
  stageKinds: ['hand-finish'],
  input: handFinishInput,
  fromProject: handFinishInputFromProject,
  calculate: calculateHandFinish,
  workIn: ({ length }) => [{ what: 'hand', amount: roundNearest(length, 1) }],
  needs: ({ threadLength }, { threads }) =>
    threads === 0 ? [] : [threadNeed('Thread for hand sewing', threads * threadLength)],
};

function calculateHandFinish(input: HandFinishInput): Result<Calculation<HandFinishDetails>, Refusal> {
  const parts = handSewnParts(input);
  if (parts === null) return failure(refuseNoRoom(input));
  const sewn = input.threadLength - input.threadTail;
  if (sewn <= 0) return failure(refuseShortThread(input));
  const length = parts.reduce((sum, part) => sum + part.length, 0);
  const time = minutesFor(length, input);
  const stitches = countQuantity(length / input.stitchLength, ['stitch', 'stitches'], 'up');
  const threads = countQuantity((length * input.threadFactor) / sewn, ['length', 'lengths'], 'up');
  return success({
    figures: [
      { label: 'Hand sewing', quantity: time },
      { label: 'Length to hand-sew', quantity: lengthUp(length) },
      { label: 'Lengths of thread', quantity: threads },
      { label: 'Stitches', quantity: stitches },
      { label: 'Your time is worth', quantity: moneyQuantity((length / input.perHour) * input.hourRate) },
    ],
    tables: [partsTable(parts, input)],
    explanation: [...lengthSteps(parts, input, length), ...workSteps(input, length, threads)],
    notes: handNotes(parts),
    diagram: handDiagram(input),
    details: { parts, length, minutes: time.exact, stitches: stitches.rounded, threads: threads.rounded },
  });
}

function refuseNoRoom(input: HandFinishInput): Refusal {
  const line = lengthUp(input.seam + input.backCover);
  const isHole = input.hole !== null;
  return {
    code: 'no-room',
    field: isHole ? ['hole', 'diameter'] : ['outline'],
    says: isHole
      ? 'A hole {hole} across leaves no room for two lines of sewing, each {line} from its edge.'
      : 'The outline is too small, or bends too tightly, for a line of sewing {line} inside its edge.',
    values: { line, ...(input.hole === null ? {} : { hole: givenLength(input.hole.diameter) }) },
  };
}

function refuseShortThread({ threadLength, threadTail }: HandFinishInput): Refusal {
  return {
    code: 'no-thread-left',
    field: ['threadTail'],
    says: 'If {tail} of a thread {thread} long goes to knots and tails, nothing is left to sew with.',
    values: { thread: givenLength(threadLength), tail: givenLength(threadTail) },
  };
}

function partsTable(parts: readonly HandSewnPart[], input: HandFinishInput): Table {
  return {
    title: 'Where to sew',
    columns: ['Part', 'Length', 'Time'],
    rows: parts.map(({ part, length }) => [
      wordsQuantity(PART_NAMES[part]),
      lengthUp(length),
      minutesFor(length, input),
    ]),
  };
}

function handNotes(parts: readonly HandSewnPart[]): readonly Note[] {
  const cautions = cautionNotes('handNeedle', 'pins');
  const closing: Note = {
    kind: 'tip',
    says: 'On a ring, sew the last stitches over the first for {over}.',
    values: { over: givenLength(lengthFromInches(1 / 2)) },
  };
  const money: Note = {
    kind: 'tip',
    says: 'The worth of your time is only a sum at your own rate. It is no advice on prices or taxes.',
    values: {},
  };
  const byMachine: Note = {
    kind: 'tip',
    says: 'For a piece that is washed often, many makers sew the binding to the back first and stitch it down on the front by machine. That takes far less time than this.',
    values: {},
  };
  const always = [byMachine, money];
  return parts.some(({ part }) => part === 'inner')
    ? [...cautions, closing, ...always]
    : [...cautions, ...always];
}

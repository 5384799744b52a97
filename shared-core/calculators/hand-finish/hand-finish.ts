import { failure, type Result, success } from '#core/result';
import { lengthFromInches } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Note, Table } from '../explanation';
import { threadNeed } from '../needs';
import { countQuantity, givenLength, lengthQuantity, moneyQuantity, wordsQuantity } from '../quantities';
import { handDiagram } from './diagram';
import { lengthSteps, minutesFor, PART_NAMES, workSteps } from './steps';
import { type HandFinishInput, handFinishInput, handFinishInputFromProject } from './input';
import { type HandSewnPart, handSewnParts } from './work';

export interface HandFinishDetails {
  readonly parts: readonly HandSewnPart[];
  /** In 1/320 mm, the sum of the parts. */
  readonly length: number;
  readonly minutes: number;
  readonly stitches: number;
  /** Needlefuls of thread. */
  readonly threads: number;
}

/** How long the hand sewing on the back is, and what it takes of hours and thread. */
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
      { label: 'Seam on the back', quantity: lengthQuantity(length, { direction: 'up' }) },
      { label: 'Thread in the needle', quantity: threads },
      { label: 'Stitches', quantity: stitches },
      { label: 'Worth at your hour', quantity: moneyQuantity((length / input.perHour) * input.hourRate) },
    ],
    tables: [partsTable(parts, input)],
    explanation: [...lengthSteps(parts, input, length), ...workSteps(input, length, threads)],
    notes: handNotes(parts),
    diagram: handDiagram(input),
    details: { parts, length, minutes: time.exact, stitches: stitches.rounded, threads: threads.rounded },
  });
}

function refuseNoRoom(input: HandFinishInput): Refusal {
  const line = lengthQuantity(input.seam + input.backCover, { direction: 'up' });
  const isHole = input.hole !== null;
  return {
    code: 'no-room',
    field: isHole ? ['hole', 'diameter'] : ['outline'],
    says: isHole
      ? 'a hole {hole} across leaves no room in this piece for two lines of sewing, each {line} from its edge.'
      : 'the piece is too small, or bends too tightly, for a line of sewing {line} inside its edge.',
    values: { line, ...(input.hole === null ? {} : { hole: givenLength(input.hole.diameter) }) },
  };
}

function refuseShortThread({ threadLength, threadTail }: HandFinishInput): Refusal {
  return {
    code: 'no-thread-left',
    field: ['threadTail'],
    says: 'thread {thread} long of which {tail} is not sewn with leaves nothing to sew with.',
    values: { thread: givenLength(threadLength), tail: givenLength(threadTail) },
  };
}

function partsTable(parts: readonly HandSewnPart[], input: HandFinishInput): Table {
  return {
    title: 'Where it is sewn',
    columns: ['Part', 'Length', 'Time'],
    rows: parts.map(({ part, length }) => [
      wordsQuantity(PART_NAMES[part]),
      lengthQuantity(length, { direction: 'up' }),
      minutesFor(length, input),
    ]),
  };
}

function handNotes(parts: readonly HandSewnPart[]): readonly Note[] {
  const needles: Note = {
    kind: 'caution',
    says: 'Count needles, pins and clips before you begin and when you end; keep them from children and pets, and never in the mouth. A lost needle in a gift hurts somebody.',
    values: {},
  };
  const begin: Note = {
    kind: 'tip',
    says: 'On a ring the last stitches cover the first by {over}.',
    values: { over: givenLength(lengthFromInches(1 / 2)) },
  };
  return parts.some(({ part }) => part === 'inner') ? [needles, begin] : [needles];
}

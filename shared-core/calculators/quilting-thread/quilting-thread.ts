import { failure, type Result, success } from '#core/result';
import { MAX_LENGTH_UNITS } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import { cautionNotes } from '../caution-notes';
import type { Note, Quantity, Table } from '../explanation';
import { threadNeed } from '../needs';
import {
  areaQuantity,
  countQuantity,
  givenLength,
  lengthNearest,
  wordsQuantity,
  yardageUp,
} from '../quantities';
import { type QuiltingThreadInput, quiltingThreadFromProject, quiltingThreadInput } from './input';
import { fromCone, quiltingThreadSteps } from './steps';
import {
  PRINTED_DENSITIES,
  type PrintedDensity,
  type QuiltingThreadWork,
  type ThreadAmount,
  workOutQuiltingThread,
} from './work';

/** Thread for the quilting, by the density in words or by the spacing of its lines, in cones and bobbins. */
export const quiltingThread: Calculator<QuiltingThreadInput, QuiltingThreadWork> = {
  name: 'quilting-thread',
  version: 1,
  title: 'Quilting thread',
  question: 'How much thread does the quilting take, and how many cones and bobbins?',
  stageKinds: ['longarm', 'home-quilting'],
  isOccasional: true,
  input: quiltingThreadInput,
  fromProject: quiltingThreadFromProject,
  calculate: calculateQuiltingThread,
  needs: (input, { chosen }) =>
    input.bobbins === 'bought-wound'
      ? [threadNeed('Quilting thread', chosen.needle), threadNeed('Bobbins of thread', chosen.bobbin)]
      : [threadNeed('Quilting thread', chosen.total)],
};

function calculateQuiltingThread(
  input: QuiltingThreadInput,
): Result<Calculation<QuiltingThreadWork>, Refusal> {
  const work = workOutQuiltingThread(input);
  const refusal = refuse(input, work);
  if (refusal !== null) return failure(refusal);
  const { chosen } = work;
  const [cones, bobbins] = [conesOf(input, fromCone(input, work)), bobbinsOf(input, chosen)];
  return success({
    figures: [
      { label: 'Thread in all', quantity: yardageUp(chosen.total) },
      { label: 'On top', quantity: yardageUp(chosen.needle) },
      { label: 'From the bobbin', quantity: yardageUp(chosen.bobbin) },
      { label: 'Bobbins', quantity: bobbins },
      { label: 'Cones', quantity: cones },
      { label: 'Area of the quilt', quantity: areaQuantity(work.area) },
    ],
    tables: [densityTable(input, work)],
    explanation: quiltingThreadSteps(input, work, { cones, bobbins }),
    notes: NOTES,
    diagram: null,
    details: work,
  });
}

const conesOf = ({ coneHolds }: QuiltingThreadInput, thread: number) =>
  countQuantity(thread / coneHolds, ['cone', 'cones'], 'up');
const bobbinsOf = ({ bobbinHolds }: QuiltingThreadInput, { bobbin }: ThreadAmount) =>
  countQuantity(bobbin / bobbinHolds, ['bobbin', 'bobbins'], 'up');

const DENSITY_WORDS: Readonly<Record<PrintedDensity, string>> = {
  light: 'Light',
  medium: 'Medium',
  heavy: 'Heavy',
};

/** Each density with the spacing at which the maker's own lines would take as much thread. */
function densityTable(input: QuiltingThreadInput, { printed, lines }: QuiltingThreadWork): Table {
  const row = (name: string, spacing: Quantity, amount: ThreadAmount): readonly Quantity[] => [
    wordsQuantity(name),
    spacing,
    yardageUp(amount.needle),
    yardageUp(amount.bobbin),
    bobbinsOf(input, amount),
  ];
  const sameThreadAt = ({ total }: ThreadAmount) =>
    lengthNearest((input.spacing * lines.enough.total) / total);
  return {
    title: 'Light, medium, heavy and your own spacing',
    columns: ['Quilting', 'Lines apart', 'On top', 'From the bobbin', 'Bobbins'],
    rows: [
      ...PRINTED_DENSITIES.map((density) =>
        row(DENSITY_WORDS[density], sameThreadAt(printed[density]), printed[density]),
      ),
      row('By your spacing', givenLength(input.spacing), lines.enough),
    ],
  };
}

function refuse(input: QuiltingThreadInput, { printed, lines, area }: QuiltingThreadWork): Refusal | null {
  if (printed.heavy.total > MAX_LENGTH_UNITS) {
    return {
      code: 'too-much-thread',
      field: ['outline'],
      says: 'A quilt of {area} would take more than 10 km of thread. Work it out in parts.',
      values: { area: areaQuantity(area) },
    };
  }
  if (lines.enough.total <= MAX_LENGTH_UNITS) return null;
  return {
    code: 'too-much-thread',
    field: ['spacing'],
    says: 'Lines {spacing} apart would take more than 10 km of thread. Work it out in parts.',
    values: { spacing: givenLength(input.spacing, 'fine') },
  };
}

const NOTES: readonly Note[] = [
  ...cautionNotes('machineNeedle'),
  {
    kind: 'tip',
    says: 'The amounts in print and the thread for your own lines may differ by half. Weigh the cone before and after your first quilt to learn what yours takes.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'A bought bobbin of size L holds 130 to 154 yd. Filled ones of other sizes differ, so measure one.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Have one cone and two bobbins more than this at hand: thread of a later dye lot may not match.',
    values: {},
  },
];

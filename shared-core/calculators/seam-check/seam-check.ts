import { failure, type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Quantity, Table } from '../explanation';
import {
  countQuantity,
  degreesQuantity,
  fineLength,
  givenLength,
  lengthQuantity,
  lengthUp,
  wordsQuantity,
} from '../quantities';
import { type SeamCheckInput, seamCheckFromProject, seamCheckInput } from './input';
import { seamCheckNotes } from './notes';
import { seamCheckSteps } from './steps';
import { sizesToMeasure } from './sizes-to-measure';
import { scatterFactors } from './student';
import { actionOf, actionWords, courseWords, ringWords } from './verdicts';
import { madeOf, type SeamCheckWork, workOutSeamCheck } from './work';

/** What seams and cuts are really off by, from blocks, rows or rounds that were measured on the way. */
export const seamCheck: Calculator<SeamCheckInput, SeamCheckWork> = {
  name: 'seam-check',
  version: 1,
  title: 'What your seams take',
  question: 'How much do my seams really take, and what do I do about it?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: seamCheckInput,
  fromProject: seamCheckFromProject,
  fromAnswers: sizesToMeasure,
  calculate: calculateSeamCheck,
};

function calculateSeamCheck(input: SeamCheckInput): Result<Calculation<SeamCheckWork>, Refusal> {
  const refusal = refuseCounts(input) ?? refuseSlip(input);
  if (refusal !== null) return failure(refusal);
  const work = workOutSeamCheck(input);
  const tooMuch = refuseWholeSeam(input, work);
  if (tooMuch !== null) return failure(tooMuch);
  return success({
    figures: figuresOf(input, work),
    tables: tablesOf(work),
    explanation: seamCheckSteps(input, work),
    notes: seamCheckNotes(input, work),
    diagram: null,
    details: work,
  });
}

/** A closed round has as many seams as patches, and nothing has more. */
function refuseCounts({ measured, top }: SeamCheckInput): Refusal | null {
  const row = measured.findIndex(({ seams, patches }) => seams > patches);
  const wrong = measured[row] ?? (top !== null && top.seams > top.patches ? top : undefined);
  if (wrong === undefined) return null;
  return {
    code: 'more-seams-than-patches',
    field: row === -1 ? ['top', 'seams'] : ['measured', row, 'seams'],
    says: '{patches} side by side can’t have {seams}.',
    values: {
      patches: countQuantity(wrong.patches, ['patch', 'patches']),
      seams: countQuantity(wrong.seams, ['seam', 'seams']),
    },
  };
}

/** Less than half or more than one and a half times its size is a slip of the pen. */
function refuseSlip(input: SeamCheckInput): Refusal | null {
  const slip = madeOf(input).find(({ off, size }) => Math.abs(off) > size / 2);
  if (slip === undefined) return null;
  return {
    code: 'unlike-size',
    field: ['measured', slip.at, 'found'],
    says: 'It should measure {size}. At {found} one of the two numbers must be a slip.',
    values: { size: givenLength(slip.size), found: givenLength(slip.found) },
  };
}

function refuseWholeSeam({ seamAllowance }: SeamCheckInput, { seam, cut }: SeamCheckWork): Refusal | null {
  const worst = Math.max(Math.abs(seam?.value ?? 0), Math.abs(cut?.value ?? 0));
  if (worst <= 2 * seamAllowance) return null;
  return {
    code: 'more-than-a-seam',
    field: ['measured'],
    says: 'A seam or a patch would be off by {off}, more than two seam allowances. Check the sizes and the numbers of seams.',
    values: { off: fineLength(worst, 'nearest') },
  };
}

const NOT_KNOWN = wordsQuantity('not known yet');

function figuresOf(input: SeamCheckInput, work: SeamCheckWork): readonly Figure[] {
  const { seam, cut } = work;
  const found = (
    labels: readonly [string, string, string],
    estimate: SeamCheckWork['seam'],
  ): readonly Figure[] =>
    estimate === null
      ? [{ label: labels[0], quantity: NOT_KNOWN }]
      : [
          {
            label: estimate.value < 0 ? labels[1] : labels[0],
            quantity: fineLength(Math.abs(estimate.value), 'nearest'),
          },
          { label: labels[2], quantity: fineLength(estimate.within, 'up') },
        ];
  return [
    { label: 'What to do now', quantity: wordsQuantity(actionWords(actionOf(input, work), work)) },
    ...found(['Each seam takes too much', 'Each seam takes too little', 'A seam, give or take'], seam),
    moveFigure(input, work),
    ...wholeFigures(work),
    { label: 'From the first to the last', quantity: wordsQuantity(courseWords(work)) },
    ...(input.cutsAreRight
      ? []
      : found(['Each patch is too wide', 'Each patch is too narrow', 'A patch, give or take'], cut)),
    ...scatterFigures(work),
    ...ringFigures(input, work),
  ];
}

function wholeFigures({ whole, top }: SeamCheckWork): readonly Figure[] {
  if (whole === null) return [];
  const name = whole.kind === 'ring' ? 'The ring' : 'The top';
  if (top === null) return [{ label: `${name} will measure`, quantity: NOT_KNOWN }];
  return [
    { label: `${name} will measure`, quantity: fineLength(top.value, 'nearest') },
    { label: `${name}, give or take`, quantity: fineLength(top.within, 'up') },
  ];
}

/** Halfway between two steps of the machine neither is safer. */
function moveFigure({ guideStep }: SeamCheckInput, { seam, move }: SeamCheckWork): Figure {
  const label = move.exact < 0 ? 'Sew each seam wider by' : 'Sew each seam narrower by';
  const size = Math.abs(move.exact);
  const words = (text: string): Figure => ({ label: 'Needle or guide', quantity: wordsQuantity(text) });
  if (seam === null) return words('leave it: nothing is known yet');
  if (size === 0) return words('leave it: no error is certain');
  if (move.rounded === 0) return words('leave it: less than half a step');
  return {
    label,
    quantity: lengthQuantity(size, { direction: 'nearest', step: guideStep, use: 'fine' }),
  };
}

function scatterFigures({ scatter }: SeamCheckWork): readonly Figure[] {
  if (scatter === null) return [];
  const { each, freedom, factor } = scatter;
  const range = scatterFactors(freedom);
  return [
    { label: 'One patch is usually within', quantity: fineLength(factor * each, 'up') },
    { label: 'Scatter of one patch', quantity: fineLength(each, 'up') },
    { label: 'Scatter, at least', quantity: fineLength(each * range.low, 'down') },
    { label: 'Scatter, at most', quantity: fineLength(each * range.high, 'up') },
  ];
}

const DEGREES = 180 / Math.PI;

function ringFigures({ ring: asked }: SeamCheckInput, work: SeamCheckWork): readonly Figure[] {
  if (asked === null) return [];
  const verdict: Figure = { label: 'The ring', quantity: wordsQuantity(ringWords(work)) };
  const { ring } = work;
  if (ring === null) return [verdict];
  return [
    verdict,
    {
      label: ring.lacks < 0 ? 'The wedges have too much' : 'The wedges lack',
      quantity: degreesQuantity(Math.abs(ring.lacks) * DEGREES),
    },
    { label: 'The angle, give or take', quantity: degreesQuantity(ring.within * DEGREES) },
    { label: 'The middle rises by', quantity: lengthUp(ring.rise) },
    { label: 'The middle rises at most by', quantity: lengthUp(ring.mostRise) },
  ];
}

function tablesOf({ made }: SeamCheckWork): readonly Table[] {
  if (made.length === 0) return [];
  const row = (one: SeamCheckWork['made'][number]): readonly Quantity[] => [
    countQuantity(one.at + 1, ['', '']),
    givenLength(one.size, 'fine'),
    givenLength(one.found, 'fine'),
    fineLength(one.off, 'nearest'),
    countQuantity(one.seams, ['seam', 'seams']),
    countQuantity(one.patches, ['patch', 'patches']),
  ];
  return [
    {
      title: 'What you measured',
      columns: ['', 'Should measure', 'Measures', 'Off by', 'Seams', 'Patches'],
      rows: made.map(row),
    },
  ];
}

import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Table } from '../explanation';
import { lengthDown, lengthNearest, lengthUp, wordsQuantity } from '../quantities';
import { accuracyDiagram } from './diagram';
import { accuracyFromProject, accuracyInput, type AccuracyInput } from './input';
import { accuracyNotes } from './notes';
import { accuracySteps } from './steps';
import { type AccuracyDetails, workOutAccuracy } from './work';

export const accuracy: Calculator<AccuracyInput, AccuracyDetails> = {
  name: 'accuracy',
  version: 1,
  title: 'How far off it may be',
  question: 'How exact do I have to sew, and what do I measure on the way?',
  stageKinds: ['piecing'],
  input: accuracyInput,
  fromProject: accuracyFromProject,
  calculate: calculateAccuracy,
};

function calculateAccuracy(input: AccuracyInput): Result<Calculation<AccuracyDetails>, Refusal> {
  const details = workOutAccuracy(input);
  return success({
    figures: figuresOf(details),
    tables: [checkTable(details)],
    explanation: accuracySteps(input, details),
    notes: accuracyNotes(input, details),
    diagram: accuracyDiagram(input, details),
    details,
  });
}

function figuresOf(details: AccuracyDetails): readonly Figure[] {
  const { block, row, column, rowsApart } = details;
  const seam = details.seamOffForLikely;
  const allowed: readonly Figure[] =
    seam === null
      ? []
      : [{ label: 'Seams within this keep a block right, as a rule', quantity: lengthDown(seam) }];
  return [
    { label: 'A block, as a rule within', quantity: lengthUp(block.likely) },
    { label: 'A block, at worst', quantity: lengthUp(block.worst) },
    { label: 'A row, as a rule within', quantity: lengthUp(row.likely) },
    { label: 'A row, at worst', quantity: lengthUp(row.worst) },
    { label: 'The top from end to end, as a rule within', quantity: lengthUp(column.likely) },
    { label: 'The top from end to end, at worst', quantity: lengthUp(column.worst) },
    { label: 'Two rows apart, as a rule within', quantity: lengthUp(rowsApart.likely) },
    ...allowed,
  ];
}

function checkTable({ checks }: AccuracyDetails): Table {
  return {
    title: 'Sizes to measure on the way',
    columns: ['After', 'Should measure', 'As a rule within', 'Not under', 'Not over'],
    rows: checks.map(({ label, size, likely, worst }) => [
      wordsQuantity(label),
      lengthNearest(size),
      lengthUp(likely),
      lengthDown(size - worst),
      lengthUp(size + worst),
    ]),
  };
}

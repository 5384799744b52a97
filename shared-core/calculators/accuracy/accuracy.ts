import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, LengthQuantity, Table } from '../explanation';
import { lengthQuantity, wordsQuantity } from '../quantities';
import { accuracyDiagram } from './accuracy-diagram';
import { accuracyFromProject, accuracyInput, type AccuracyInput } from './accuracy-input';
import { accuracyNotes } from './accuracy-notes';
import { accuracySteps } from './accuracy-steps';
import { type AccuracyDetails, workOutAccuracy } from './accuracy-work';

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
    seam === null ? [] : [{ label: 'Seams within this keep a block right, as a rule', quantity: down(seam) }];
  return [
    { label: 'A block, as a rule within', quantity: up(block.likely) },
    { label: 'A block, at worst', quantity: up(block.worst) },
    { label: 'A row, as a rule within', quantity: up(row.likely) },
    { label: 'A row, at worst', quantity: up(row.worst) },
    { label: 'The top from end to end, as a rule within', quantity: up(column.likely) },
    { label: 'The top from end to end, at worst', quantity: up(column.worst) },
    { label: 'Two rows apart, as a rule within', quantity: up(rowsApart.likely) },
    ...allowed,
  ];
}

function checkTable({ checks }: AccuracyDetails): Table {
  return {
    title: 'Sizes to measure on the way',
    columns: ['After', 'Should measure', 'As a rule within', 'Not under', 'Not over'],
    rows: checks.map(({ label, size, likely, worst }) => [
      wordsQuantity(label),
      lengthQuantity(size, { direction: 'nearest' }),
      up(likely),
      down(size - worst),
      up(size + worst),
    ]),
  };
}

/** An error is never made to look smaller than it is. */
function up(exact: number): LengthQuantity {
  return lengthQuantity(exact, { direction: 'up' });
}

function down(exact: number): LengthQuantity {
  return lengthQuantity(exact, { direction: 'down' });
}

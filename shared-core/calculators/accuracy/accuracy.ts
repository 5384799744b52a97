import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Table } from '../explanation';
import { fineLength, wordsQuantity } from '../quantities';
import { accuracyDiagram } from './diagram';
import { accuracyFromProject, accuracyInput, type AccuracyInput } from './input';
import { accuracyNotes } from './notes';
import { accuracySteps } from './steps';
import type { Spread } from './spread';
import { type AccuracyDetails, workOutAccuracy } from './work';

export const accuracy: Calculator<AccuracyInput, AccuracyDetails> = {
  name: 'accuracy',
  version: 3,
  title: 'How accurate to sew',
  question: 'How accurately do I have to sew, and what do I measure along the way?',
  stageKinds: ['piecing'],
  input: accuracyInput,
  fromProject: accuracyFromProject,
  calculate: calculateAccuracy,
};

function calculateAccuracy(input: AccuracyInput): Result<Calculation<AccuracyDetails>, Refusal> {
  const details = workOutAccuracy(input);
  return success({
    figures: figuresOf(input, details),
    tables: [checkTable(details)],
    explanation: accuracySteps(input, details),
    notes: accuracyNotes(input, details),
    diagram: accuracyDiagram(input, details),
    details,
  });
}

function figuresOf({ patchesAcross }: AccuracyInput, details: AccuracyDetails): readonly Figure[] {
  const { block, row, column, rowsApart, seamOffForLikely } = details;
  const within = (label: string, { likely, worst }: Spread): readonly Figure[] => [
    { label: `${label}, usually within`, quantity: fineLength(likely, 'up') },
    { label: `${label}, at worst`, quantity: fineLength(worst, 'up') },
  ];
  const allowed: readonly Figure[] =
    patchesAcross === 1
      ? []
      : [
          {
            label: 'Seams within this usually keep a block right',
            quantity:
              seamOffForLikely === null
                ? wordsQuantity('none: the cuts alone are off by more')
                : fineLength(seamOffForLikely, 'down'),
          },
        ];
  return [
    ...within('A block', block),
    ...within('A row', row),
    ...within('The top from end to end', column),
    { label: 'Two rows differ, usually within', quantity: fineLength(rowsApart.likely, 'up') },
    ...allowed,
  ];
}

/** The limits are rounded inward, so that the table never allows more than the error it is made for. */
function checkTable({ checks }: AccuracyDetails): Table {
  return {
    title: 'Sizes to measure along the way',
    columns: ['After', 'Should measure', 'Usually within', 'Not under', 'Not over'],
    rows: checks.map(({ label, size, likely, worst }) => [
      wordsQuantity(label),
      fineLength(size, 'nearest'),
      fineLength(likely, 'up'),
      fineLength(size - worst, 'up'),
      fineLength(size + worst, 'down'),
    ]),
  };
}

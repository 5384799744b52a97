import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { fineLength, lengthNearest, lengthQuantity, lengthUp } from '#core/calculators/quantities';
import { cautionNotes } from '#core/calculators/caution-notes';
import { CENTER_CUT_NOTES } from '../center-notes';
import { type HoleSizeInput, holeSizeFromProject, holeSizeInput, isMeasured, rulerRounding } from './input';
import { holeDiagram } from './diagram';
import { holeSizeSteps, rulerTable } from './steps';
import { type HoleSizeDetails, workOutHole } from './work';

export const holeSize: Calculator<HoleSizeInput, HoleSizeDetails> = {
  name: 'hole-size',
  version: 2,
  title: 'Size of the hole',
  question: 'How large a hole does the stand, trunk or pole need?',
  stageKinds: ['center-cut'],
  input: holeSizeInput,
  fromProject: holeSizeFromProject,
  decidesHole: ({ diameter }) => ({ diameter }),
  calculate(input) {
    const details = workOutHole(input);
    return success({
      figures: [
        {
          label: 'Diameter of the hole to cut',
          quantity: lengthQuantity(details.exactDiameter, rulerRounding(input)),
        },
        {
          label: 'Radius, for a turning ruler',
          quantity: fineLength(details.diameter / 2, 'down'),
        },
        {
          label: 'Edge of the hole, all the way around',
          quantity: lengthUp(Math.PI * details.diameter),
        },
        {
          label: 'Seam line of its binding',
          quantity: lengthUp(details.seamLine),
        },
      ],
      tables: [rulerTable(input, details)],
      explanation: holeSizeSteps(input, details),
      notes: notesOf(input, details),
      diagram: holeDiagram(input, details),
      details,
    });
  },
};

function notesOf(input: HoleSizeInput, details: HoleSizeDetails): readonly Note[] {
  const room: readonly Note[] =
    isMeasured(input) && details.diameter > details.exactDiameter + 1
      ? [
          {
            kind: 'tip',
            says: 'The next ruler size is {more} larger than you need.',
            values: {
              more: lengthNearest(details.diameter - details.exactDiameter),
            },
          },
        ]
      : [];
  return [
    ...room,
    {
      kind: 'tip',
      says: 'The binding folds over the cut edge, so the finished hole is smaller by twice the thickness of the binding. Thick fabric needs more ease.',
      values: {},
    },
    ...CENTER_CUT_NOTES,
    ...cautionNotes('tree', 'flame'),
  ];
}

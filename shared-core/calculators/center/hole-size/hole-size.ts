import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import { fineLength, lengthDown, lengthQuantity, lengthUp } from '#core/calculators/quantities';
import { type HoleSizeInput, holeSizeFromProject, holeSizeInput, rulerRounding } from './input';
import { holeDiagram } from './diagram';
import { holeSizeNotes } from './notes';
import { holeSizeSteps, lifeTable, rulerTable } from './steps';
import { type HoleSizeDetails, workOutHole } from './work';

export const holeSize: Calculator<HoleSizeInput, HoleSizeDetails> = {
  name: 'hole-size',
  version: 3,
  title: 'Size of the hole',
  question: 'How large a hole does the stand, trunk or pole need?',
  stageKinds: ['center-cut'],
  input: holeSizeInput,
  fromProject: holeSizeFromProject,
  // The maker tries sizes here, and the hole takes the larger shrinkage of the two.
  startsFromProject: ['measure', 'washPercent'],
  decides: ({ diameter }) => ({ hole: { diameter } }),
  calculate(input) {
    const hole = workOutHole(input);
    if (!hole.ok) return hole;
    const details = hole.value;
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
          label: 'The hole, bound and washed',
          quantity: lengthDown(details.washed),
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
      tables: [lifeTable(details), rulerTable(input, details)],
      explanation: holeSizeSteps(input, details),
      notes: holeSizeNotes(input, details),
      diagram: holeDiagram(input, details),
      details,
    });
  },
};

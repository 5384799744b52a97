import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthQuantity,
  lengthUp,
  wordsQuantity,
} from '#core/calculators/quantities';
import { centerClearanceDiagram } from './diagram';
import { type CenterClearanceInput, centerClearanceFromProject, centerClearanceInput } from './input';
import { centerClearanceSteps } from './steps';
import { clearanceTable, quarterTable } from './tables';
import { CENTER_CUT_NOTES } from '../center-notes';
import { type CenterClearanceDetails, workOutClearance } from './work';

export const centerClearance: Calculator<CenterClearanceInput, CenterClearanceDetails> = {
  name: 'center-clearance',
  version: 3,
  title: 'Room around the hole',
  question: 'Do the hole and its seam line stay inside the center patch?',
  stageKinds: ['center-cut'],
  input: centerClearanceInput,
  fromProject: centerClearanceFromProject,
  calculate(input) {
    const details = workOutClearance(input);
    return success({
      figures: figuresOf(details),
      tables: [clearanceTable(details), quarterTable(details)],
      explanation: centerClearanceSteps(input, details),
      notes: [...clearanceNotes(input, details), ...CENTER_CUT_NOTES],
      diagram: centerClearanceDiagram(input, details),
      details,
    });
  },
};

function figuresOf(details: CenterClearanceDetails): readonly Figure[] {
  const { clearanceAtSeam, staysInside, largestHole } = details;
  return [
    {
      label: staysInside ? 'Fabric left beside the seam line' : 'The seam line leaves the patch by',
      quantity: lengthQuantity(Math.abs(clearanceAtSeam), { direction: staysInside ? 'down' : 'up' }),
    },
    { label: 'Inside the center patch', quantity: wordsQuantity(staysInside ? 'yes' : 'no') },
    {
      label: 'Seams it crosses',
      quantity: countQuantity(details.seamsCrossed, ['seam', 'seams']),
    },
    ...(largestHole > 0 ? [{ label: 'Largest hole here', quantity: lengthDown(largestHole) }] : []),
  ];
}

function clearanceNotes(input: CenterClearanceInput, details: CenterClearanceDetails): readonly Note[] {
  const { clearanceAtSeam, worstClearance, clearanceAtBack } = details;
  if (clearanceAtSeam < 0 && details.seamsCrossed === 0) {
    return [
      {
        kind: 'warning',
        says: 'The stitching runs outside the center patch, as far as {out} from it, and does not cross its seams. Look for the seams of the patches it runs over.',
        values: { out: lengthUp(-clearanceAtSeam) },
      },
    ];
  }
  if (clearanceAtSeam < 0) {
    return [
      {
        kind: 'tip',
        says: 'The stitching leaves the center patch by {out} and crosses {seams}. That is usual where seams meet in the middle. Stay-stitch first so that the seams do not open, and keep the join of the binding strip off a seam. If the patch holds a motif that should stay whole, make the hole smaller.',
        values: {
          out: lengthUp(-clearanceAtSeam),
          seams: countQuantity(details.seamsCrossed, ['seam', 'seams']),
        },
      },
    ];
  }
  if (worstClearance < 0) {
    return [
      {
        kind: 'warning',
        says: 'Only {left} is left. If the center is off by {off}, the stitching is on a seam.',
        values: {
          left: lengthDown(clearanceAtSeam),
          off: givenLength(input.accuracy),
        },
      },
    ];
  }
  if (clearanceAtBack >= 0) return [];
  return [
    {
      kind: 'tip',
      says: 'On the back, the fold covers a seam of the patch. It will be thicker there.',
      values: {},
    },
  ];
}

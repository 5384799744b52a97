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
  version: 2,
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
  if (clearanceAtSeam < 0) {
    return [
      {
        kind: 'warning',
        says: 'The stitching leaves the patch by {out} and crosses a seam. Make the hole smaller or move its center.',
        values: { out: lengthUp(-clearanceAtSeam) },
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

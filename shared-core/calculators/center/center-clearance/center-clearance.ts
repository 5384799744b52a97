import { success } from '#core/result';
import type { Calculation, Calculator } from '#core/calculators/calculator';
import type { Figure } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthQuantity, wordsQuantity } from '#core/calculators/quantities';
import { patchDiagram, seamsDiagram } from './diagram';
import {
  type CenterClearanceInput,
  centerClearanceFromProject,
  centerClearanceInput,
  type OnePatch,
  type SeamsMeet,
} from './input';
import { patchSteps, seamSteps } from './steps';
import { clearanceTable, quarterTable } from './tables';
import { CENTER_CUT_NOTES } from '../center-notes';
import { patchNotes, seamNotes } from './notes';
import {
  type CenterClearanceDetails,
  type PatchClearance,
  type SeamsClearance,
  workOutPatch,
  workOutSeams,
} from './work';

export const centerClearance: Calculator<CenterClearanceInput, CenterClearanceDetails> = {
  name: 'center-clearance',
  version: 4,
  title: 'Room around the hole',
  question: 'Does the hole stay inside one patch, or which seams does it cross?',
  stageKinds: ['center-cut'],
  input: centerClearanceInput,
  fromProject: centerClearanceFromProject,
  calculate(input) {
    const { middle } = input;
    return success(middle.what === 'one-patch' ? inPatch(input, middle) : acrossSeams(input, middle));
  },
};

function inPatch(input: CenterClearanceInput, asked: OnePatch): Calculation<PatchClearance> {
  const details = workOutPatch(input, asked);
  return {
    figures: patchFigures(details),
    tables: [clearanceTable(details), quarterTable(details)],
    explanation: patchSteps(input, asked, details),
    notes: [...patchNotes(asked, details), ...CENTER_CUT_NOTES],
    diagram: patchDiagram(input, asked, details),
    details,
  };
}

function patchFigures(details: PatchClearance): readonly Figure[] {
  const { clearanceAtSeam, staysInside, largestHole } = details;
  return [
    {
      label: staysInside ? 'Fabric left beside the seam line' : 'The seam line leaves the patch by',
      quantity: lengthQuantity(Math.abs(clearanceAtSeam), { direction: staysInside ? 'down' : 'up' }),
    },
    { label: 'Inside the center patch', quantity: wordsQuantity(staysInside ? 'yes' : 'no') },
    seamsFigure(details.seamsCrossed),
    ...(largestHole > 0 ? [{ label: 'Largest hole here', quantity: lengthDown(largestHole) }] : []),
  ];
}

function acrossSeams(input: CenterClearanceInput, asked: SeamsMeet): Calculation<SeamsClearance> {
  const details = workOutSeams(input, asked);
  return {
    figures: [
      seamsFigure(details.seamsCrossed),
      { label: 'From seam to seam along the stitching', quantity: lengthDown(details.betweenSeams) },
    ],
    tables: [quarterTable(details)],
    explanation: seamSteps(input, details),
    notes: [...seamNotes(details), ...CENTER_CUT_NOTES],
    diagram: seamsDiagram(input, details),
    details,
  };
}

function seamsFigure(seams: number): Figure {
  return { label: 'Seams it crosses', quantity: countQuantity(seams, ['seam', 'seams']) };
}

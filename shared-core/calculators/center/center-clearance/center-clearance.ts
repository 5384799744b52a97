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
import {
  type CenterClearanceDetails,
  type CenterClearanceInput,
  centerClearanceFromProject,
  centerClearanceInput,
  patchOf,
} from './input';
import { centerClearanceSteps } from './steps';
import { clearanceTable, quarterTable } from './tables';
import { CENTER_CUT_NOTES } from '../center-notes';
import { distanceToPatchEdge, seamsCrossed } from './center-patch';

export const centerClearance: Calculator<CenterClearanceInput, CenterClearanceDetails> = {
  name: 'center-clearance',
  version: 1,
  title: 'Clearance of the hole',
  question: 'Does the hole with its seam line stay inside the center patch?',
  stageKinds: ['center-cut'],
  input: centerClearanceInput,
  fromProject: centerClearanceFromProject,
  calculate(asked) {
    const details = detailsOf(asked);
    return success({
      figures: figuresOf(details),
      tables: [clearanceTable(details), quarterTable(details)],
      explanation: centerClearanceSteps(asked, details),
      notes: [...clearanceNotes(asked, details), ...CENTER_CUT_NOTES],
      diagram: centerClearanceDiagram(asked, details),
      details,
    });
  },
};

function detailsOf(asked: CenterClearanceInput): CenterClearanceDetails {
  const patch = patchOf(asked);
  const center = { x: asked.offsetAcross, y: asked.offsetDown };
  const cutRadius = asked.holeDiameter / 2;
  const seamRadius = cutRadius + asked.seamAllowance;
  const centerToEdge = distanceToPatchEdge(patch, center);
  const clearanceAtSeam = centerToEdge - seamRadius;
  return {
    cutRadius,
    seamRadius,
    centerToEdge,
    clearanceAtCut: centerToEdge - cutRadius,
    clearanceAtSeam,
    clearanceAtBack: clearanceAtSeam - asked.backCover,
    worstClearance: clearanceAtSeam - asked.accuracy,
    seamsCrossed: seamsCrossed(patch, center, seamRadius),
    staysInside: clearanceAtSeam >= 0,
    largestHole: 2 * (centerToEdge - asked.seamAllowance),
  };
}

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

function clearanceNotes(asked: CenterClearanceInput, details: CenterClearanceDetails): readonly Note[] {
  const { clearanceAtSeam, worstClearance, clearanceAtBack } = details;
  if (clearanceAtSeam < 0) {
    return [
      {
        kind: 'warning',
        says: 'The stitching runs over a seam of the patch: it leaves the patch by {out}. A smaller hole or another center keeps it clear.',
        values: { out: lengthUp(-clearanceAtSeam) },
      },
    ];
  }
  if (worstClearance < 0) {
    return [
      {
        kind: 'warning',
        says: 'Only {left} is left: a center that is off by {off} puts the stitching on a seam.',
        values: {
          left: lengthDown(clearanceAtSeam),
          off: givenLength(asked.accuracy),
        },
      },
    ];
  }
  if (clearanceAtBack >= 0) return [];
  return [
    {
      kind: 'tip',
      says: 'On the back the fold lies over a seam of the patch; it will be thicker there.',
      values: {},
    },
  ];
}

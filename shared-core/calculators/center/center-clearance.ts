import { success } from '#core/result';
import type { Calculator } from '../calculator';
import type { Diagram } from '../diagram';
import type { Explanation, Figure, Note, Quantity, Rule, Step, Table } from '../explanation';
import { countQuantity, degreesQuantity, givenLength, lengthQuantity, wordsQuantity } from '../quantities';
import {
  type CenterClearanceInput,
  centerClearanceFromProject,
  centerClearanceInput,
} from './center-clearance-input';
import { CENTER_CUT_NOTES } from './center-notes';
import { type CenterPatch, distanceToPatchEdge, patchPart, seamsCrossed } from './center-patch';

export interface CenterClearanceDetails {
  readonly cutRadius: number;
  readonly seamRadius: number;
  /** From the hole's center to the nearest seam of the patch; negative outside the patch. */
  readonly centerToEdge: number;
  /** Cloth of the patch left at the cut edge, the seam line and the fold on the back; negative by how far each sticks out. */
  readonly clearanceAtCut: number;
  readonly clearanceAtSeam: number;
  readonly clearanceAtBack: number;
  /** At the seam line, with the center off by the accuracy in the worst direction. */
  readonly worstClearance: number;
  readonly seamsCrossed: number;
  readonly staysInside: boolean;
  /** Largest hole whose seam line stays inside at this center; not above zero where none does. */
  readonly largestHole: number;
}

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
      explanation: stepsOf(asked, details),
      notes: [...clearanceNotes(asked, details), ...CENTER_CUT_NOTES],
      diagram: diagramOf(asked, details),
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

function patchOf(asked: CenterClearanceInput): CenterPatch {
  return { shape: asked.patchShape, across: asked.patchAcross, sides: asked.patchSides };
}

function figuresOf(details: CenterClearanceDetails): readonly Figure[] {
  const { clearanceAtSeam, staysInside, largestHole } = details;
  return [
    {
      label: staysInside ? 'Cloth left beside the seam line' : 'The seam line leaves the patch by',
      quantity: lengthQuantity(Math.abs(clearanceAtSeam), { direction: staysInside ? 'down' : 'up' }),
    },
    { label: 'Inside the center patch', quantity: wordsQuantity(staysInside ? 'yes' : 'no') },
    {
      label: 'Seams it crosses',
      quantity: countQuantity(details.seamsCrossed, ['seam', 'seams']),
    },
    ...(largestHole > 0
      ? [{ label: 'Largest hole here', quantity: lengthQuantity(largestHole, { direction: 'down' }) }]
      : []),
  ];
}

function clearanceTable(details: CenterClearanceDetails): Table {
  const row = (words: string, radius: number, left: number): readonly Quantity[] => [
    wordsQuantity(words),
    lengthQuantity(radius, { direction: 'nearest' }),
    lengthQuantity(left, { direction: 'down' }),
  ];
  const { cutRadius, seamRadius, clearanceAtCut, clearanceAtSeam, clearanceAtBack } = details;
  return {
    title: 'Cloth of the patch that is left',
    columns: ['At', 'Radius', 'Left'],
    rows: [
      row('the cut edge', cutRadius, clearanceAtCut),
      row('the seam line', seamRadius, clearanceAtSeam),
      row('the fold on the back', seamRadius + clearanceAtSeam - clearanceAtBack, clearanceAtBack),
      row('the seam line, center off by your accuracy', seamRadius, details.worstClearance),
    ],
  };
}

/** Marks on a piece folded twice: each lies the same way from the folded corner, here measured along both folds. */
function quarterTable({ cutRadius }: CenterClearanceDetails): Table {
  return {
    title: 'Quarter template: the cut line on a piece folded twice',
    columns: ['From one fold', 'Along that fold', 'Up from it', 'From the folded corner'],
    rows: [0, 15, 30, 45, 60, 75, 90].map((degrees): readonly Quantity[] => {
      const angle = (degrees * Math.PI) / 180;
      return [
        degreesQuantity(degrees),
        lengthQuantity(cutRadius * Math.cos(angle), { direction: 'nearest' }),
        lengthQuantity(cutRadius * Math.sin(angle), { direction: 'nearest' }),
        lengthQuantity(cutRadius, { direction: 'nearest' }),
      ];
    }),
  };
}

const EDGE_FORMULAS: Readonly<Record<CenterPatch['shape'], string>> = {
  square: 'D = A ÷ 2 − max(|x|, |y|)',
  circle: 'D = A ÷ 2 − √(x² + y²)',
  polygon: 'D = shortest way from the hole’s center to a side',
};

function stepsOf(asked: CenterClearanceInput, details: CenterClearanceDetails): Explanation {
  const derived: Rule = { kind: 'derived', says: 'The nearest seam decides.' };
  const toEdge = lengthQuantity(details.centerToEdge, { direction: 'down' });
  const stitched: Step = {
    label: 'Radius of the seam line',
    formula: 'q = d ÷ 2 + s',
    terms: [
      { symbol: 'd', means: 'hole across', quantity: givenLength(asked.holeDiameter) },
      { symbol: 's', means: 'seam allowance', quantity: givenLength(asked.seamAllowance) },
    ],
    result: lengthQuantity(details.seamRadius, { direction: 'up' }),
    rule: { kind: 'derived', says: 'The binding is stitched a seam outside the cut edge.' },
  };
  return [
    {
      label: 'From the hole’s center to the nearest seam',
      formula: EDGE_FORMULAS[asked.patchShape],
      terms: [
        { symbol: 'A', means: 'center patch across', quantity: givenLength(asked.patchAcross) },
        { symbol: 'x', means: 'to the right of its middle', quantity: givenLength(asked.offsetAcross) },
        { symbol: 'y', means: 'below its middle', quantity: givenLength(asked.offsetDown) },
      ],
      result: toEdge,
      rule: derived,
    },
    stitched,
    {
      label: 'Cloth left beside the seam line',
      formula: 'D − q',
      terms: [
        { symbol: 'D', means: 'to the nearest seam', quantity: toEdge },
        { symbol: 'q', means: 'radius of the seam line', quantity: stitched.result },
      ],
      result: lengthQuantity(details.clearanceAtSeam, { direction: 'down' }),
      rule: derived,
    },
    {
      label: 'Largest hole at this center',
      formula: '2(D − s)',
      terms: [{ symbol: 'D', means: 'to the nearest seam', quantity: toEdge }],
      result: lengthQuantity(details.largestHole, { direction: 'down' }),
      rule: { kind: 'derived', says: 'Its seam line just touches the nearest seam.' },
    },
  ];
}

function clearanceNotes(asked: CenterClearanceInput, details: CenterClearanceDetails): readonly Note[] {
  const { clearanceAtSeam, worstClearance, clearanceAtBack } = details;
  if (clearanceAtSeam < 0) {
    return [
      {
        kind: 'warning',
        says: 'The stitching runs over a seam of the patch: it leaves the patch by {out}. A smaller hole or another center keeps it clear.',
        values: { out: lengthQuantity(-clearanceAtSeam, { direction: 'up' }) },
      },
    ];
  }
  if (worstClearance < 0) {
    return [
      {
        kind: 'warning',
        says: 'Only {left} is left: a center that is off by {off} puts the stitching on a seam.',
        values: {
          left: lengthQuantity(clearanceAtSeam, { direction: 'down' }),
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

function diagramOf(asked: CenterClearanceInput, details: CenterClearanceDetails): Diagram {
  const off = Math.max(Math.abs(asked.offsetAcross), Math.abs(asked.offsetDown));
  const half = Math.max(asked.patchAcross, off + details.seamRadius);
  const middle = { x: half, y: half };
  const center = { x: half + asked.offsetAcross, y: half + asked.offsetDown };
  const arm = details.cutRadius / 8;
  return {
    title: 'The center patch with the hole and its seam line',
    width: 2 * half,
    height: 2 * half,
    parts: [
      patchPart(patchOf(asked), middle),
      {
        part: 'circle',
        center,
        radius: details.seamRadius,
        tone: details.staysInside ? 'seam' : 'warning',
      },
      { part: 'circle', center, radius: details.cutRadius, tone: 'cut' },
      {
        part: 'line',
        from: { x: center.x - arm, y: center.y },
        to: { x: center.x + arm, y: center.y },
        tone: 'mark',
      },
      {
        part: 'line',
        from: { x: center.x, y: center.y - arm },
        to: { x: center.x, y: center.y + arm },
        tone: 'mark',
      },
      {
        part: 'dimension',
        from: { x: center.x - details.cutRadius, y: center.y },
        to: { x: center.x + details.cutRadius, y: center.y },
        offset: details.cutRadius / 3,
        length: asked.holeDiameter,
      },
    ],
  };
}

import type { Explanation, Step } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthUp } from '#core/calculators/quantities';
import { derived, givenTerm, term } from '#core/calculators/working/terms';
import type { CenterClearanceInput, OnePatch } from './input';
import type { HoleCircles, PatchClearance, SeamsClearance } from './work';
import type { CenterPatch } from './center-patch';

const EDGE_FORMULAS: Readonly<Record<CenterPatch['shape'], string>> = {
  square: 'D = A ÷ 2 − max(|x|, |y|)',
  circle: 'D = A ÷ 2 − √(x² + y²)',
  polygon: 'D = shortest distance from the center of the hole to a side',
};

/** Diagonally outside a square, the nearest point of it is its corner. */
function edgeFormula({ patchShape, patchAcross, offsetAcross, offsetDown }: OnePatch): string {
  const isPastCorner = Math.min(Math.abs(offsetAcross), Math.abs(offsetDown)) > patchAcross / 2;
  return EDGE_FORMULAS[patchShape === 'square' && isPastCorner ? 'polygon' : patchShape];
}

function stitchedStep({ holeDiameter, seamAllowance }: CenterClearanceInput, circles: HoleCircles): Step {
  return {
    label: 'Radius of the seam line',
    formula: 'q = d ÷ 2 + s',
    terms: [givenTerm('d', 'hole diameter', holeDiameter), givenTerm('s', 'seam allowance', seamAllowance)],
    result: lengthUp(circles.seamRadius),
    rule: derived('The binding is stitched one seam allowance outside the cut edge.'),
  };
}

/** From the nearest seam of the patch to the fabric left beside the seam line. */
export function patchSteps(
  input: CenterClearanceInput,
  asked: OnePatch,
  details: PatchClearance,
): Explanation {
  const nearest = derived('The nearest seam sets the limit.');
  const toEdge = lengthDown(details.centerToEdge);
  const stitched = stitchedStep(input, details);
  return [
    {
      label: 'From the center of the hole to the nearest seam',
      formula: edgeFormula(asked),
      terms: [
        givenTerm('A', 'center patch across', asked.patchAcross),
        givenTerm('x', 'to the right of its middle', asked.offsetAcross),
        givenTerm('y', 'below its middle', asked.offsetDown),
      ],
      result: toEdge,
      rule: nearest,
    },
    stitched,
    {
      label: 'Fabric left beside the seam line',
      formula: 'D − q',
      terms: [
        term('D', 'to the nearest seam', toEdge),
        term('q', 'radius of the seam line', stitched.result),
      ],
      result: lengthDown(details.clearanceAtSeam),
      rule: nearest,
    },
    {
      label: 'Largest hole at this center',
      formula: '2(D − s)',
      terms: [
        term('D', 'to the nearest seam', toEdge),
        givenTerm('s', 'seam allowance', input.seamAllowance),
      ],
      result: lengthDown(details.largestHole),
      rule: derived('The seam line of this hole just touches the nearest seam.'),
    },
  ];
}

/** From the radius of the seam line to the way along it between two seams. */
export function seamSteps(input: CenterClearanceInput, details: SeamsClearance): Explanation {
  const stitched = stitchedStep(input, details);
  return [
    stitched,
    {
      label: 'From seam to seam along the stitching',
      formula: '2πq ÷ n',
      terms: [
        term('q', 'radius of the seam line', stitched.result),
        term('n', 'seams that meet in the middle', countQuantity(details.seamsCrossed, ['seam', 'seams'])),
      ],
      result: lengthDown(details.betweenSeams),
      rule: derived('Seams that meet in the middle are spaced evenly around it.'),
    },
  ];
}

import type { Explanation, Step } from '#core/calculators/explanation';
import { lengthDown, lengthUp } from '#core/calculators/quantities';
import { derived, givenTerm, term } from '#core/calculators/working/terms';
import type { CenterClearanceInput } from './input';
import type { CenterClearanceDetails } from './work';
import type { CenterPatch } from './center-patch';

const EDGE_FORMULAS: Readonly<Record<CenterPatch['shape'], string>> = {
  square: 'D = A ÷ 2 − max(|x|, |y|)',
  circle: 'D = A ÷ 2 − √(x² + y²)',
  polygon: 'D = shortest distance from the center of the hole to a side',
};

/** Diagonally outside a square, the nearest point of it is its corner. */
function edgeFormula({ patchShape, patchAcross, offsetAcross, offsetDown }: CenterClearanceInput): string {
  const isPastCorner = Math.min(Math.abs(offsetAcross), Math.abs(offsetDown)) > patchAcross / 2;
  return EDGE_FORMULAS[patchShape === 'square' && isPastCorner ? 'polygon' : patchShape];
}

/** From the nearest seam to the fabric left beside the seam line. */
export function centerClearanceSteps(
  input: CenterClearanceInput,
  details: CenterClearanceDetails,
): Explanation {
  const nearest = derived('The nearest seam sets the limit.');
  const toEdge = lengthDown(details.centerToEdge);
  const stitched: Step = {
    label: 'Radius of the seam line',
    formula: 'q = d ÷ 2 + s',
    terms: [
      givenTerm('d', 'hole diameter', input.holeDiameter),
      givenTerm('s', 'seam allowance', input.seamAllowance),
    ],
    result: lengthUp(details.seamRadius),
    rule: derived('The binding is stitched one seam allowance outside the cut edge.'),
  };
  return [
    {
      label: 'From the center of the hole to the nearest seam',
      formula: edgeFormula(input),
      terms: [
        givenTerm('A', 'center patch across', input.patchAcross),
        givenTerm('x', 'to the right of its middle', input.offsetAcross),
        givenTerm('y', 'below its middle', input.offsetDown),
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

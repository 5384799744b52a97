import type { Explanation, Rule, Step } from '#core/calculators/explanation';
import { lengthDown, lengthUp } from '#core/calculators/quantities';
import { givenTerm } from '#core/calculators/working/terms';
import type { CenterClearanceDetails, CenterClearanceInput } from './input';
import type { CenterPatch } from './center-patch';

const EDGE_FORMULAS: Readonly<Record<CenterPatch['shape'], string>> = {
  square: 'D = A ÷ 2 − max(|x|, |y|)',
  circle: 'D = A ÷ 2 − √(x² + y²)',
  polygon: 'D = shortest way from the hole’s center to a side',
};

/** Past a corner of a square the nearest point of it is the corner itself. */
function edgeFormula({ patchShape, patchAcross, offsetAcross, offsetDown }: CenterClearanceInput): string {
  const isPastCorner = Math.min(Math.abs(offsetAcross), Math.abs(offsetDown)) > patchAcross / 2;
  return EDGE_FORMULAS[patchShape === 'square' && isPastCorner ? 'polygon' : patchShape];
}

/** From the nearest seam to what is left beside the seam line. */
export function centerClearanceSteps(
  asked: CenterClearanceInput,
  details: CenterClearanceDetails,
): Explanation {
  const derived: Rule = { kind: 'derived', says: 'The nearest seam decides.' };
  const toEdge = lengthDown(details.centerToEdge);
  const stitched: Step = {
    label: 'Radius of the seam line',
    formula: 'q = d ÷ 2 + s',
    terms: [
      givenTerm('d', 'hole across', asked.holeDiameter),
      givenTerm('s', 'seam allowance', asked.seamAllowance),
    ],
    result: lengthUp(details.seamRadius),
    rule: { kind: 'derived', says: 'The binding is stitched a seam outside the cut edge.' },
  };
  return [
    {
      label: 'From the hole’s center to the nearest seam',
      formula: edgeFormula(asked),
      terms: [
        givenTerm('A', 'center patch across', asked.patchAcross),
        givenTerm('x', 'to the right of its middle', asked.offsetAcross),
        givenTerm('y', 'below its middle', asked.offsetDown),
      ],
      result: toEdge,
      rule: derived,
    },
    stitched,
    {
      label: 'Fabric left beside the seam line',
      formula: 'D − q',
      terms: [
        { symbol: 'D', means: 'to the nearest seam', quantity: toEdge },
        { symbol: 'q', means: 'radius of the seam line', quantity: stitched.result },
      ],
      result: lengthDown(details.clearanceAtSeam),
      rule: derived,
    },
    {
      label: 'Largest hole at this center',
      formula: '2(D − s)',
      terms: [
        { symbol: 'D', means: 'to the nearest seam', quantity: toEdge },
        givenTerm('s', 'seam allowance', asked.seamAllowance),
      ],
      result: lengthDown(details.largestHole),
      rule: { kind: 'derived', says: 'Its seam line just touches the nearest seam.' },
    },
  ];
}

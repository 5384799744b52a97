import type { Explanation, Rule, Step } from '../explanation';
import { givenLength, lengthQuantity } from '../quantities';
import type { CenterClearanceDetails, CenterClearanceInput } from './center-clearance-input';
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
      formula: edgeFormula(asked),
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
      label: 'Fabric left beside the seam line',
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
      terms: [
        { symbol: 'D', means: 'to the nearest seam', quantity: toEdge },
        { symbol: 's', means: 'seam allowance', quantity: givenLength(asked.seamAllowance) },
      ],
      result: lengthQuantity(details.largestHole, { direction: 'down' }),
      rule: { kind: 'derived', says: 'Its seam line just touches the nearest seam.' },
    },
  ];
}

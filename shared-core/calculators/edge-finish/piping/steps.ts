import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import { outlineEdgeStep } from '#core/calculators/binding/outer-binding/edge-step';
import type { Explanation, Step } from '#core/calculators/explanation';
import {
  countQuantity,
  fineLength,
  givenLength,
  lengthDown,
  lengthUp,
  yardageUp,
} from '#core/calculators/quantities';
import { commonPractice, derived, fineTerm, givenTerm, term } from '#core/calculators/working/terms';
import { edgeStripsSteps } from '../edge-strips';
import type { PipingInput } from './input';
import { type PipingDetails, stripToCut } from './work';

/** The edge, the strip, the fabric and the clips. */
export function pipingSteps(input: PipingInput, details: PipingDetails): Explanation {
  return [
    edgeStep(input, details),
    {
      label: 'Cord and strip needed',
      formula: 'N = P + x',
      terms: [
        term('P', 'line of stitching', lengthUp(details.edge)),
        givenTerm('x', 'extra for joining the ends', input.extra),
      ],
      result: lengthUp(details.needed),
      rule: commonPractice('The ends overlap a little and are trimmed to meet.'),
    },
    {
      label: 'Strip width',
      formula: 'w = π · d + 2s, rounded up',
      terms: [
        fineTerm('d', 'thickness of the cord', input.cord),
        givenTerm('s', 'seam allowance', input.seamAllowance),
      ],
      result: stripToCut(input),
      rule: derived('Once around the cord, and a seam allowance on both sides.'),
    },
    {
      label: 'Cord to buy',
      formula: 'N, rounded up to what shops cut',
      terms: [term('N', 'cord needed', lengthUp(details.needed))],
      result: yardageUp(details.needed, input.yardageStep),
      rule: commonPractice('Shops cut cord from a roll by the same steps as fabric.'),
    },
    ...edgeStripsSteps(input, details),
    fabricToBuyStep(input, details.fabric, { means: 'fabric for the strips' }),
    ...clipSteps(input, details),
  ];
}

function edgeStep(input: PipingInput, { edge }: PipingDetails): Step {
  if (input.around === 'outside' || input.hole === null) return outlineEdgeStep(input.outline);
  return {
    label: 'Line of stitching around the hole',
    formula: '2π(r + s)',
    terms: [
      term('r', 'half the hole', lengthUp(input.hole.diameter / 2)),
      givenTerm('s', 'seam allowance', input.seamAllowance),
    ],
    result: lengthUp(edge),
    rule: derived('The seam runs s outside the cut edge of the hole.'),
  };
}

function clipSteps(input: PipingInput, { bend }: PipingDetails): readonly Step[] {
  if (bend === null) return [];
  const every = givenTerm('p', 'from clip to clip', input.clipEvery);
  return [
    {
      label: 'Clips along the bend',
      formula: 'B ÷ p, rounded up',
      terms: [term('B', 'length of the bend', lengthUp(bend.length)), every],
      result: countQuantity(bend.clips, ['clip', 'clips'], 'up'),
      rule: commonPractice('Clip the seam allowance of the piping only, to just before the stitching.'),
    },
    {
      label: 'How far a clip opens or overlaps',
      formula: 'p · s ÷ R',
      terms: [
        every,
        term('s', 'seam allowance', givenLength(input.seamAllowance)),
        term('R', 'radius of the tightest bend', lengthDown(bend.radius)),
      ],
      result: fineLength(bend.opening, 'up'),
      rule: derived('The cut edges run s away from the stitching.'),
    },
  ];
}

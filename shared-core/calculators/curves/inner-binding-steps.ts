import type { Explanation, Rule, Step, Term } from '../explanation';
import { degreesQuantity, givenLength, lengthQuantity } from '../quantities';
import type { InnerBindingInput } from './inner-binding-input';
import { curveOf, type InnerBindingDetails } from './inner-binding-plan';
import { strainSteps } from './strain-steps';

const derived = (says: string): Rule => ({ kind: 'derived', says });
const practice = (says: string): Rule => ({ kind: 'common practice', says });
const up = { direction: 'up' } as const;

export function innerBindingSteps(asked: InnerBindingInput, details: InnerBindingDetails): Explanation {
  return [
    ringStep(asked, details),
    ...(details.legs > 0 ? [legsStep(asked, details)] : []),
    jointStep(asked, details),
    stripStep(asked, details),
    {
      label: 'Square that gives it in one piece',
      formula: 'a = (L + w) ÷ √2, rounded up',
      terms: [
        { symbol: 'L', means: 'strip to cut', quantity: lengthQuantity(details.stripLength, up) },
        { symbol: 'w', means: 'strip width', quantity: givenLength(asked.stripWidth) },
      ],
      result: lengthQuantity((details.stripLength + asked.stripWidth) / Math.SQRT2, {
        direction: 'up',
        step: asked.squareStep,
      }),
      rule: derived('A strip with square ends along the diagonal of a square is a√2 − w long.'),
    },
    {
      label: 'Strip that just wraps the edge',
      formula: asked.fold === 'double' ? 'w = 6s + 2t + 2c' : 'w = 4s + t + c',
      terms: [
        { symbol: 's', means: 'seam', quantity: givenLength(asked.seamAllowance) },
        { symbol: 't', means: 'thickness', quantity: givenLength(asked.quiltThickness) },
        { symbol: 'c', means: 'cover on the back', quantity: givenLength(asked.backCover) },
      ],
      result: lengthQuantity(details.stripForSeam, { direction: 'up', step: asked.cutStep }),
      rule: derived('Inside the seam, up the front, over the edge, down the back and past the seam.'),
    },
    ...strainSteps(curveOf(asked), details.strains),
  ];
}

function ringStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  const radius: Term = {
    symbol: 'r',
    means: 'radius of the cut edge',
    quantity: lengthQuantity(details.cutRadius, { direction: 'nearest' }),
  };
  const seam: Term = { symbol: 's', means: 'seam allowance', quantity: givenLength(asked.seamAllowance) };
  const result = lengthQuantity(details.seamLine, up);
  if (!asked.hasSlit) {
    return {
      label: 'Seam line',
      formula: '2π(r + s)',
      terms: [radius, seam],
      result,
      rule: derived(
        'The strip is stitched a seam outside the cut edge, on a larger circle, at its natural length.',
      ),
    };
  }
  const degrees = (2 * Math.asin(asked.seamAllowance / details.seamRadius) * 180) / Math.PI;
  return {
    label: 'Seam line round the hole',
    formula: '(2π − 2·asin(s ÷ (r + s))) · (r + s)',
    terms: [
      radius,
      seam,
      { symbol: '2·asin', means: 'left out at the slit', quantity: degreesQuantity(degrees) },
    ],
    result,
    rule: derived('The slit makes the ring an arc: the stitching of the legs cuts its ends off.'),
  };
}

function legsStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  return {
    label: 'Both legs of the slit',
    formula: '2(d + s)',
    terms: [
      { symbol: 'd', means: 'slit from edge to hole', quantity: givenLength(asked.slitLength) },
      {
        symbol: 's',
        means: 'for the miter on the ring’s side of each corner',
        quantity: givenLength(asked.seamAllowance),
      },
    ],
    result: lengthQuantity(details.legs, up),
    rule: derived('The strip runs along the raw edge to each corner, is folded there and goes on.'),
  };
}

function jointStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  const fold: Term = { symbol: 'f', means: 'fold at the start', quantity: givenLength(asked.startFold) };
  const result = lengthQuantity(details.joint, up);
  if (asked.hasSlit) {
    return {
      label: 'Ends',
      formula: '2f',
      terms: [fold],
      result,
      rule: practice('Both ends are folded under at the outer edge, or under the outer binding.'),
    };
  }
  if (asked.joint === 'diagonal') {
    return {
      label: 'Joint',
      formula: 'w',
      terms: [{ symbol: 'w', means: 'strip width', quantity: givenLength(asked.stripWidth) }],
      result,
      rule: derived('A diagonal joint takes a strip width of length.'),
    };
  }
  return {
    label: 'Joint',
    formula: 'f + o + k',
    terms: [
      fold,
      { symbol: 'o', means: 'overlap', quantity: givenLength(asked.overlap) },
      { symbol: 'k', means: 'tucked into the fold', quantity: givenLength(asked.tuck) },
    ],
    result,
    rule: practice(
      'The start is folded under by 1/2 in, the end overlaps by 1/2 in and slips into the fold.',
    ),
  };
}

function stripStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  const legs: Term = { symbol: 'G', means: 'legs of the slit', quantity: lengthQuantity(details.legs, up) };
  return {
    label: 'Strip to cut',
    formula: details.legs > 0 ? 'L = C + G + J' : 'L = C + J',
    terms: [
      { symbol: 'C', means: 'seam line', quantity: lengthQuantity(details.seamLine, up) },
      ...(details.legs > 0 ? [legs] : []),
      { symbol: 'J', means: asked.hasSlit ? 'ends' : 'joint', quantity: lengthQuantity(details.joint, up) },
    ],
    result: lengthQuantity(details.stripLength, { direction: 'up', step: asked.cutStep }),
    rule: derived(
      'Cut to the stitching line, not to the raw edge: cut to the raw edge it would have to stretch.',
    ),
  };
}

import type { Explanation, Step, Term } from '#core/calculators/explanation';
import { degreesQuantity, lengthNearest, lengthUp } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm } from '#core/calculators/working/terms';
import type { InnerBindingInput } from './input';
import { curveOf, type InnerBindingDetails } from './work';
import { strainSteps } from '../strain-steps';

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
        { symbol: 'L', means: 'strip to cut', quantity: lengthUp(details.stripLength) },
        givenTerm('w', 'strip width', asked.stripWidth),
      ],
      result: lengthUp((details.stripLength + asked.stripWidth) / Math.SQRT2, asked.squareStep),
      rule: derived('A strip with square ends along the diagonal of a square is a√2 − w long.'),
    },
    {
      label: 'Strip that just wraps the edge',
      formula: asked.fold === 'double' ? 'w = 6s + 2t + 2c' : 'w = 4s + t + c',
      terms: [
        givenTerm('s', 'seam', asked.seamAllowance),
        givenTerm('t', 'thickness', asked.quiltThickness),
        givenTerm('c', 'cover on the back', asked.backCover),
      ],
      result: lengthUp(details.stripForSeam, asked.cutStep),
      rule: derived('Inside the seam, up the front, over the edge, down the back and past the seam.'),
    },
    ...strainSteps(curveOf(asked), details.strains),
  ];
}

function ringStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  const radius: Term = {
    symbol: 'r',
    means: 'radius of the cut edge',
    quantity: lengthNearest(details.cutRadius),
  };
  const seam: Term = givenTerm('s', 'seam allowance', asked.seamAllowance);
  const result = lengthUp(details.seamLine);
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
      givenTerm('d', 'slit from edge to hole', asked.slitLength),
      givenTerm('s', 'for the miter on the ring’s side of each corner', asked.seamAllowance),
    ],
    result: lengthUp(details.legs),
    rule: derived('The strip runs along the raw edge to each corner, is folded there and goes on.'),
  };
}

function jointStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  const fold: Term = givenTerm('f', 'fold at the start', asked.startFold);
  const result = lengthUp(details.joint);
  if (asked.hasSlit) {
    return {
      label: 'Ends',
      formula: '2f',
      terms: [fold],
      result,
      rule: commonPractice('Both ends are folded under at the outer edge, or under the outer binding.'),
    };
  }
  if (asked.joint === 'diagonal') {
    return {
      label: 'Joint',
      formula: 'w',
      terms: [givenTerm('w', 'strip width', asked.stripWidth)],
      result,
      rule: derived('A diagonal joint takes a strip width of length.'),
    };
  }
  return {
    label: 'Joint',
    formula: 'f + o + k',
    terms: [
      fold,
      givenTerm('o', 'overlap', asked.overlap),
      givenTerm('k', 'tucked into the fold', asked.tuck),
    ],
    result,
    rule: commonPractice(
      'The start is folded under by 1/2 in, the end overlaps by 1/2 in and slips into the fold.',
    ),
  };
}

function stripStep(asked: InnerBindingInput, details: InnerBindingDetails): Step {
  const legs: Term = { symbol: 'G', means: 'legs of the slit', quantity: lengthUp(details.legs) };
  return {
    label: 'Strip to cut',
    formula: details.legs > 0 ? 'L = C + G + J' : 'L = C + J',
    terms: [
      { symbol: 'C', means: 'seam line', quantity: lengthUp(details.seamLine) },
      ...(details.legs > 0 ? [legs] : []),
      { symbol: 'J', means: asked.hasSlit ? 'ends' : 'joint', quantity: lengthUp(details.joint) },
    ],
    result: lengthUp(details.stripLength, asked.cutStep),
    rule: derived(
      'Cut to the stitching line, not to the raw edge: cut to the raw edge it would have to stretch.',
    ),
  };
}

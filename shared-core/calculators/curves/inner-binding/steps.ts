import type { Explanation, Step, Term } from '#core/calculators/explanation';
import { degreesQuantity, lengthNearest, lengthUp } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import type { InnerBindingInput } from './input';
import { curveOf, type InnerBindingDetails } from './work';
import { strainSteps } from '../strain-steps';

export function innerBindingSteps(input: InnerBindingInput, details: InnerBindingDetails): Explanation {
  return [
    ringStep(input, details),
    ...(details.legs > 0 ? [legsStep(input, details)] : []),
    joinStep(input, details),
    stripStep(input, details),
    ...fabricSteps(input, details),
    {
      label: 'Strip that just wraps the edge',
      formula: input.fold === 'double' ? 'w = 6s + 2t + 2c' : 'w = 4s + t + c',
      terms: [
        givenTerm('s', 'seam allowance', input.seamAllowance),
        givenTerm('t', 'thickness', input.quiltThickness),
        givenTerm('c', 'cover on the back', input.backCover),
      ],
      result: lengthUp(details.stripForSeam, input.cutStep),
      rule: derived(
        'The strip covers the seam allowance, the front, the edge, the back, and a little more than the seam.',
      ),
    },
    ...strainSteps(curveOf(input), details.strains),
  ];
}

function fabricSteps(input: InnerBindingInput, details: InnerBindingDetails): readonly Step[] {
  const strip = givenTerm('w', 'strip width', input.stripWidth);
  const fold = givenTerm('f', 'fold at the outer edge', input.startFold);
  const legSteps: readonly Step[] = [
    {
      label: 'Bias for the hole alone',
      formula: 'B = C + w',
      terms: [term('C', 'seam line', lengthUp(details.seamLine)), strip],
      result: lengthUp(details.biasLength, input.cutStep),
      rule: derived('Two diagonal joins to the straight strips take half a strip width here from each.'),
    },
    {
      label: 'Straight strip for each side of the slit',
      formula: 'G ÷ 2 + f + w ÷ 2',
      terms: [term('G', 'both sides of the slit', lengthUp(details.legs)), fold, strip],
      result: lengthUp(details.legStrip, input.cutStep),
      rule: derived('The sides of a slit are straight, so straight grain works there.'),
    },
  ];
  return [
    ...(details.legStrip > 0 ? legSteps : []),
    ...(details.squareForOneStrip === null
      ? []
      : [
          {
            label: 'Square of fabric for one unbroken strip',
            formula: 'a = (B + w) ÷ √2, rounded up',
            terms: [term('B', 'bias to cut', lengthUp(details.biasLength)), strip],
            result: lengthUp((details.biasLength + input.stripWidth) / Math.SQRT2, input.squareStep),
            rule: derived('A strip with square ends, cut along the diagonal of a square, is a√2 − w long.'),
          },
        ]),
  ];
}

function ringStep(input: InnerBindingInput, details: InnerBindingDetails): Step {
  const radius: Term = term('r', 'radius of the cut edge', lengthNearest(details.cutRadius));
  const seam: Term = givenTerm('s', 'seam allowance', input.seamAllowance);
  const result = lengthUp(details.seamLine);
  if (!input.hasSlit) {
    return {
      label: 'Seam line',
      formula: '2π(r + s)',
      terms: [radius, seam],
      result,
      rule: derived(
        'The strip is stitched one seam allowance outside the cut edge, on a larger circle, without stretching it.',
      ),
    };
  }
  const degrees = (2 * Math.asin(input.seamAllowance / details.seamRadius) * 180) / Math.PI;
  return {
    label: 'Seam line around the hole',
    formula: '(2π − 2·asin(s ÷ (r + s))) · (r + s)',
    terms: [radius, seam, term('2·asin', 'angle left out at the slit', degreesQuantity(degrees))],
    result,
    rule: derived('The slit opens the ring: the stitching along the slit cuts off both ends of the circle.'),
  };
}

function legsStep(input: InnerBindingInput, details: InnerBindingDetails): Step {
  return {
    label: 'Both sides of the slit',
    formula: '2(d + s)',
    terms: [
      givenTerm('d', 'slit from the edge to the hole', input.slitLength),
      givenTerm('s', 'for the miter at each corner', input.seamAllowance),
    ],
    result: lengthUp(details.legs),
    rule: derived('The strip runs along the raw edge to each corner and is folded there.'),
  };
}

function joinStep(input: InnerBindingInput, details: InnerBindingDetails): Step {
  const fold: Term = givenTerm('f', 'fold at the start', input.startFold);
  const result = lengthUp(details.join);
  if (input.hasSlit) {
    return {
      label: 'Ends',
      formula: '2f',
      terms: [fold],
      result,
      rule: commonPractice('Both ends are folded under at the outer edge or under the outer binding.'),
    };
  }
  if (input.join === 'diagonal') {
    return {
      label: 'Join',
      formula: 'w',
      terms: [givenTerm('w', 'strip width', input.stripWidth)],
      result,
      rule: derived('A diagonal join takes as much length as the strip is wide.'),
    };
  }
  return {
    label: 'Join',
    formula: 'f + o + k',
    terms: [
      fold,
      givenTerm('o', 'overlap', input.overlap),
      givenTerm('k', 'length tucked into the fold', input.tuck),
    ],
    result,
    rule: commonPractice(
      'The start is folded under by 1/2 in, the end overlaps it by 1/2 in and slips into the fold.',
    ),
  };
}

function stripStep(input: InnerBindingInput, details: InnerBindingDetails): Step {
  const legs: Term = term('G', 'both sides of the slit', lengthUp(details.legs));
  return {
    label: 'Strip to cut',
    formula: details.legs > 0 ? 'L = C + G + J' : 'L = C + J',
    terms: [
      term('C', 'seam line', lengthUp(details.seamLine)),
      ...(details.legs > 0 ? [legs] : []),
      term('J', input.hasSlit ? 'ends' : 'join', lengthUp(details.join)),
    ],
    result: lengthUp(details.stripLength, input.cutStep),
    rule: derived(
      'Cut to the length of the stitching line. Cut to the length of the raw edge, it would have to stretch.',
    ),
  };
}

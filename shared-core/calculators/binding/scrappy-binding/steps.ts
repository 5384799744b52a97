import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import type { Explanation, Step } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthUp } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import { outlineEdgeStep } from '../outer-binding/edge-step';
import { joinCost } from '../strip-joins';
import type { ScrappyBindingInput } from './input';
import { type ScrappyBindingDetails } from './work';

/** The edge, what the strips give, and what is left over or missing. */
export function scrappyBindingSteps(input: ScrappyBindingInput, details: ScrappyBindingDetails): Explanation {
  return [
    outlineEdgeStep(input.outline),
    {
      label: 'Strip needed',
      formula: 'N = E + o',
      terms: [term('E', 'edge to bind', lengthUp(details.edge)), givenTerm('o', 'overlap', input.overlap)],
      result: lengthUp(details.needed),
      rule: commonPractice('The overlap is for the closing join and for safety.'),
    },
    {
      label: 'All strips, end to end',
      formula: 'S = ℓ₁ + ℓ₂ + … + ℓₙ',
      terms: [term('n', 'strips', countQuantity(details.strips, ['strip', 'strips']))],
      result: lengthDown(details.total),
      rule: derived('Every strip you have, before any join.'),
    },
    joinedStep(input, details),
    ...(details.missing > 0 ? missingSteps(input, details) : [spareStep(details)]),
  ];
}

function joinedStep(input: ScrappyBindingInput, details: ScrappyBindingDetails): Step {
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  const [join, rule] =
    input.join === 'diagonal'
      ? ['j = w', 'A diagonal join takes one strip width of length.']
      : ['j = 2s', 'A straight join takes both seam allowances.'];
  return {
    label: 'What they give',
    formula: 'G = S − (n − 1) · j',
    terms: [
      term('S', 'all strips', lengthDown(details.total)),
      term('n', 'strips', countQuantity(details.strips, ['strip', 'strips'])),
      term('j', `what a join takes, ${join}`, lengthUp(cost)),
    ],
    result: lengthDown(details.given),
    rule: derived(rule),
  };
}

function spareStep({ given, needed, spare }: ScrappyBindingDetails): Step {
  return {
    label: 'Left over',
    formula: 'G − N',
    terms: [term('G', 'what they give', lengthDown(given)), term('N', 'strip needed', lengthUp(needed))],
    result: lengthDown(spare),
    rule: derived('Your strips reach around the edge.'),
  };
}

function missingSteps(input: ScrappyBindingInput, details: ScrappyBindingDetails): readonly Step[] {
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  const missing = term('m', 'missing', lengthUp(details.missing));
  return [
    {
      label: 'Missing',
      formula: 'm = N − G',
      terms: [
        term('N', 'strip needed', lengthUp(details.needed)),
        term('G', 'what they give', lengthDown(details.given)),
      ],
      result: lengthUp(details.missing),
      rule: derived('Your strips don’t reach around the edge.'),
    },
    {
      label: 'More strips to cut',
      formula: 'm ÷ (U − j), rounded up',
      terms: [
        missing,
        givenTerm('U', 'length of a strip: usable fabric width', input.fabricWidth),
        term('j', 'what a join takes', lengthUp(cost)),
      ],
      result: countQuantity(details.missing / (input.fabricWidth - cost), ['strip', 'strips'], 'up'),
      rule: derived('Each is joined to the strips that are there.'),
    },
    {
      label: 'Fabric for them',
      formula: 'n · w',
      terms: [
        term('n', 'more strips', countQuantity(details.more, ['strip', 'strips'])),
        givenTerm('w', 'strip width', input.stripWidth),
      ],
      result: lengthUp(details.fabric),
      rule: derived('The strips are cut side by side, across the fabric.'),
    },
    fabricToBuyStep(input, details.fabric, { symbol: 'n · w', means: 'fabric for the strips' }),
  ];
}

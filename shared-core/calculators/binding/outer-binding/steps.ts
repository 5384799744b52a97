import type { Explanation, Rule, Step, Term } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthQuantity,
  numberQuantity,
  percentQuantity,
} from '#core/calculators/quantities';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { foldReach } from '../strip-width';
import { joinCost } from '../strip-joins';
import type { OuterBindingInput } from './input';
import type { OuterBindingDetails } from './work';
import { outlineEdgeStep } from './edge-step';

const derived = (says: string): Rule => ({ kind: 'derived', says });
const up = { direction: 'up' } as const;
const down = { direction: 'down' } as const;

const term = (symbol: string, means: string, quantity: Term['quantity']): Term => ({
  symbol,
  means,
  quantity,
});

/** From the edge to the fabric, then from the strip to what it covers. */
export function outerBindingSteps(input: OuterBindingInput, details: OuterBindingDetails): Explanation {
  return [
    outlineEdgeStep(input.outline),
    ...edgeSteps(input, details),
    ...stripSteps(input, details),
    ...coverSteps(input, details),
    ...bendSteps(input, details),
  ];
}

function edgeSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const { slit, edge, cornerExtra, needed } = details;
  const perimeter = lengthQuantity(outlinePerimeter(input.outline), up);
  const slitStep: Step = {
    label: 'With both sides of the slit',
    formula: 'E = P + 2d',
    terms: [
      term('P', 'length of the outline', perimeter),
      term('d', 'slit from edge to hole', lengthQuantity(slit, up)),
    ],
    result: lengthQuantity(edge, up),
    rule: derived('The binding runs down one side of the slit and up the other.'),
  };
  const cornerStep: Step = {
    label: 'Extra at inner corners',
    formula: 'x = m · 2s · tan((α − 180°) ÷ 2)',
    terms: [
      term('m', 'inner corners', countQuantity(input.innerCorners, ['corner', 'corners'])),
      term('s', 'seam allowance', givenLength(input.seamAllowance)),
      term('α', 'angle through the piece', { kind: 'degrees', exact: input.innerCornerAngle }),
    ],
    result: lengthQuantity(cornerExtra, up),
    rule: derived(
      'At an inner corner the stitching is longer than the edge; at an outer one the miter takes no extra.',
    ),
  };
  const hasExtra = input.innerCorners > 0;
  return [
    ...(slit > 0 ? [slitStep] : []),
    ...(hasExtra ? [cornerStep] : []),
    {
      label: 'Strip needed',
      formula: hasExtra ? 'N = E + x + o' : 'N = E + o',
      terms: [
        term('E', 'edge to bind', lengthQuantity(edge, up)),
        ...(hasExtra ? [term('x', 'extra at inner corners', lengthQuantity(cornerExtra, up))] : []),
        term('o', 'overlap', givenLength(input.overlap)),
      ],
      result: lengthQuantity(needed, up),
      rule: { kind: 'common practice', says: 'The overlap is for the closing join and for safety.' },
    },
  ];
}

function stripSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  const [join, rule] =
    input.join === 'diagonal'
      ? ['j = w', 'A diagonal join takes a strip width of length.']
      : ['j = 2s', 'A straight join takes both seam allowances.'];
  const length = term('U', 'length of a strip: usable fabric width', givenLength(input.fabricWidth));
  const costTerm = term('j', `what a join takes, ${join}`, lengthQuantity(cost, up));
  const count = term('n', 'strips', countQuantity(details.strips, ['strip', 'strips']));
  return [
    {
      label: 'Strips',
      formula: 'n = (N − j) ÷ (U − j), rounded up',
      terms: [term('N', 'strip needed', lengthQuantity(details.needed, up)), length, costTerm],
      result: countQuantity((details.needed - cost) / (input.fabricWidth - cost), ['strip', 'strips'], 'up'),
      rule: derived(rule),
    },
    {
      label: 'What they give',
      formula: 'n · U − (n − 1) · j',
      terms: [count, length, costTerm],
      result: lengthQuantity(details.given, down),
      rule: derived('Every strip but the first loses one join.'),
    },
    {
      label: 'Fabric for straight strips',
      formula: 'n · w',
      terms: [count, term('w', 'strip width', givenLength(input.stripWidth))],
      result: lengthQuantity(details.fabric, up),
      rule: derived('The strips lie side by side across the fabric.'),
    },
    {
      label: 'Fabric to buy',
      formula: 'n · w · (1 + e), rounded up',
      terms: [
        term('n · w', 'fabric for the strips', lengthQuantity(details.fabric, up)),
        term('e', 'safety extra', percentQuantity(input.safetyExtra)),
      ],
      result: lengthQuantity(details.fabric * (1 + input.safetyExtra / 100), {
        direction: 'up',
        step: input.yardageStep,
        use: 'yardage',
      }),
      rule: { kind: 'common practice', says: 'A little more for squaring up and slips.' },
    },
  ];
}

function coverSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const isDouble = input.fold === 'double';
  const seam = term('s', 'seam, and width seen on the front', givenLength(input.seamAllowance));
  const thickness = term('t', 'thickness at the edge', givenLength(input.quiltThickness));
  const cover = term('c', 'cover on the back', givenLength(input.backCover));
  const strip = term('w', 'strip width', givenLength(input.stripWidth));
  return [
    {
      label: 'Strip that fits your seam',
      formula: isDouble ? 'w = 6s + 2t + 2c' : 'w = 4s + t + c',
      terms: [seam, thickness, cover],
      result: lengthQuantity(details.stripForSeam, { direction: 'up', step: input.cutStep }),
      rule: derived(
        isDouble
          ? 'Two layers, each running inside the seam, up the front, over the edge, down the back and past the seam.'
          : 'One layer over the edge, its far edge turned under by a seam.',
      ),
    },
    {
      label: 'Front width your strip is right for',
      formula: isDouble ? '(w − 2t − 2c) ÷ 6' : '(w − t − c) ÷ 4',
      terms: [strip, thickness, cover],
      result: lengthQuantity(details.frontWidth, down),
      rule: derived('The same, turned round.'),
    },
    {
      label: 'Cover your strip gives with your seam',
      formula: isDouble ? 'w ÷ 2 − 3s − t' : 'w − 4s − t',
      terms: [strip, seam, thickness],
      result: lengthQuantity(details.cover, down),
      rule: derived('What is left of the strip past the seam on the back.'),
    },
  ];
}

function bendSteps(input: OuterBindingInput, { bend }: OuterBindingDetails): readonly Step[] {
  if (bend === null) return [];
  const reach = foldReach(input.fold, input.stripWidth, input.seamAllowance);
  return [
    {
      label: 'How far the strip has to give round the bend',
      formula: 'g = max(f, s, c) ÷ (R − s), against limit',
      terms: [
        term('f', 'from the seam to the fold while sewing', lengthQuantity(reach, up)),
        term('s', 'seam allowance', givenLength(input.seamAllowance)),
        term('c', 'cover on the back', givenLength(input.backCover)),
        term('R', 'radius of the tightest bend', lengthQuantity(bend.radius, down)),
        term('limit', 'what straight grain gives', numberQuantity(input.straightGrainGive)),
      ],
      result: percentQuantity(100 * bend.strain),
      rule: derived(
        'The stitching runs at R − s; the fold lies further in and is eased, the fabric at the edge is stretched.',
      ),
    },
  ];
}

import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import type { Explanation, Step } from '#core/calculators/explanation';
import {
  countQuantity,
  degreesQuantity,
  lengthDown,
  lengthUp,
  percentQuantity,
} from '#core/calculators/quantities';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import { continuousBiasRows } from '../continuous-bias/work';
import { joinCost } from '../strip-joins';
import type { OuterBindingInput } from './input';
import { type OuterBindingDetails } from './work';
import type { BindingWay } from './ways';
import { outlineEdgeStep } from './edge-step';

/** From the edge to the fabric, then from the strip to what it covers and how it bends. */
export function outerBindingSteps(input: OuterBindingInput, details: OuterBindingDetails): Explanation {
  return [
    outlineEdgeStep(input.outline),
    ...edgeSteps(input, details),
    ...(details.biasWay === null ? stripSteps(input, details) : biasSteps(input, details, details.biasWay)),
    ...coverSteps(input, details),
    ...bendSteps(input, details),
  ];
}

function edgeSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const { slit, hole, edge, cornerExtra, needed } = details;
  const perimeter = lengthUp(outlinePerimeter(input.outline));
  const slitStep: Step = {
    label: hole > 0 ? 'With both sides of the slit, and the hole' : 'With both sides of the slit',
    formula: hole > 0 ? 'E = P + 2d + h' : 'E = P + 2d',
    terms: [
      term('P', 'length of the outline', perimeter),
      term('d', 'slit, from the edge to the hole', lengthUp(slit)),
      ...(hole > 0 ? [term('h', 'around the hole, along its seam line', lengthUp(hole))] : []),
    ],
    result: lengthUp(edge),
    rule: derived(
      hole > 0
        ? 'The binding runs down one side of the slit, around the hole and up the other side.'
        : 'The binding runs down one side of the slit and up the other.',
    ),
  };
  const cornerStep: Step = {
    label: 'Extra at inner corners',
    formula: 'x = m · 2s · tan((α − 180°) ÷ 2)',
    terms: [
      term('m', 'inner corners', countQuantity(input.innerCorners, ['corner', 'corners'])),
      givenTerm('s', 'seam allowance', input.seamAllowance),
      term('α', 'angle through the quilt', degreesQuantity(input.innerCornerAngle)),
    ],
    result: lengthUp(cornerExtra),
    rule: derived(
      'At an inner corner the stitching is longer than the edge. At an outer corner the miter takes no extra strip.',
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
        term('E', 'edge to bind', lengthUp(edge)),
        ...(hasExtra ? [term('x', 'extra at inner corners', lengthUp(cornerExtra))] : []),
        givenTerm('o', 'overlap', input.overlap),
      ],
      result: lengthUp(needed),
      rule: commonPractice('The overlap is for the closing join and for safety.'),
    },
  ];
}

function stripSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  const [join, rule] =
    input.join === 'diagonal'
      ? ['j = w', 'A diagonal join takes one strip width of length.']
      : ['j = 2s', 'A straight join takes both seam allowances.'];
  const length = givenTerm('U', 'length of a strip: usable fabric width', input.fabricWidth);
  const costTerm = term('j', `what a join takes, ${join}`, lengthUp(cost));
  const count = term('n', 'strips', countQuantity(details.strips, ['strip', 'strips']));
  return [
    {
      label: 'Strips',
      formula: 'n = (N − j) ÷ (U − j), rounded up, at least one',
      terms: [term('N', 'strip needed', lengthUp(details.needed)), length, costTerm],
      result: countQuantity(
        details.needed > cost ? (details.needed - cost) / (input.fabricWidth - cost) : 1,
        ['strip', 'strips'],
        'up',
      ),
      rule: derived(rule),
    },
    {
      label: 'What they give',
      formula: 'n · U − (n − 1) · j',
      terms: [count, length, costTerm],
      result: lengthDown(details.given),
      rule: derived('Every strip but the first loses one join.'),
    },
    {
      label: 'Fabric for straight strips',
      formula: 'n · w',
      terms: [count, givenTerm('w', 'strip width', input.stripWidth)],
      result: lengthUp(details.fabric),
      rule: derived('The strips are cut side by side, across the fabric.'),
    },
    fabricToBuyStep(input, details.fabric, { symbol: 'n · w', means: 'fabric for the strips' }),
  ];
}

/** The strip that the squares give, and the fabric to buy for them. */
function biasSteps(
  input: OuterBindingInput,
  details: OuterBindingDetails,
  bias: BindingWay,
): readonly Step[] {
  const { stripWidth: strip, seamAllowance: seam } = input;
  const rows = continuousBiasRows({ side: bias.width, strip, seam });
  const gives: Step = {
    label: 'Strip that the squares give',
    formula: 'n · (k · (a − 2s) · √2 − w)',
    terms: [
      term('n', 'squares', countQuantity(bias.pieces, ['square', 'squares'])),
      term('k', 'whole rows in a square', countQuantity(rows, ['row', 'rows'])),
      term('a', 'side of a square', lengthUp(bias.width)),
      givenTerm('s', 'seam allowance', seam),
      givenTerm('w', 'strip width', strip),
    ],
    result: lengthDown(bias.gives),
    rule: derived(
      'Every row is as long as the seamed square’s diagonal. Squaring the ends takes a strip width.',
    ),
  };
  return [
    ...(bias.way === 'continuous-bias' ? [gives] : []),
    fabricToBuyStep(input, details.fabric, { symbol: 'F', means: 'length of fabric for the bias' }),
  ];
}

function coverSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const isDouble = input.fold === 'double';
  const seam = givenTerm('s', 'seam allowance, and width on the front', input.seamAllowance);
  const thickness = givenTerm('t', 'thickness at the edge', input.quiltThickness);
  const cover = givenTerm('c', 'cover on the back', input.backCover);
  const strip = givenTerm('w', 'strip width', input.stripWidth);
  return [
    {
      label: 'Strip width that fits your seam',
      formula: isDouble ? 'w = 6s + 2t + 2c' : 'w = 4s + t + c',
      terms: [seam, thickness, cover],
      result: lengthUp(details.stripForSeam, input.cutStep),
      rule: derived(
        isDouble
          ? 'Two layers. Each covers the seam allowance, the front, the edge, the back and the cover past the seam.'
          : 'One layer over the edge, with its far edge turned under by a seam allowance.',
      ),
    },
    {
      label: 'Front width your strip fits',
      formula: isDouble ? '(w − 2t − 2c) ÷ 6' : '(w − t − c) ÷ 4',
      terms: [strip, thickness, cover],
      result: lengthDown(details.frontWidth),
      rule: derived('The same formula, solved for the width.'),
    },
    {
      label: 'Cover your strip gives on the back',
      formula: isDouble ? 'w ÷ 2 − 3s − t' : 'w − 4s − t',
      terms: [strip, seam, thickness],
      result: lengthDown(details.cover),
      rule: derived('The part of the strip past the seam on the back.'),
    },
  ];
}

function bendSteps(input: OuterBindingInput, details: OuterBindingDetails): readonly Step[] {
  const { bend } = details;
  if (bend === null) return [];
  const cover = Math.max(0, details.cover);
  const isInside = bend.side === 'inside';
  return [
    {
      label: 'How much the turned strip has to stretch or ease around the bend',
      formula: isInside ? 'g = max(s, c) ÷ (R + s)' : 'g = max(s, c) ÷ (R − s)',
      terms: [
        givenTerm('s', 'seam allowance', input.seamAllowance),
        term('c', 'past the seam on the back', lengthDown(cover)),
        term('R', isInside ? 'radius of the hole' : 'radius of the tightest bend', lengthDown(bend.radius)),
      ],
      result: percentQuantity(100 * bend.strain),
      rule: derived(
        isInside
          ? 'The stitching runs at R + s. The fold on the back is farther out and gets stretched; the fabric at the edge gets eased. Whatever the percent, a hole takes bias.'
          : 'The stitching runs at R − s. The fold on the back is farther in and gets eased; the fabric at the edge gets stretched. Whatever the percent, a curved edge takes bias.',
      ),
    },
  ];
}

import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import { outlineEdgeStep } from '#core/calculators/binding/outer-binding/edge-step';
import type { Explanation, Step } from '#core/calculators/explanation';
import { outlineBounds } from '#core/calculators/outline/outline-measures';
import {
  countQuantity,
  fineLength,
  givenLength,
  lengthDown,
  lengthUp,
  percentQuantity,
} from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import { edgeStripsSteps } from '../edge-strips';
import type { FacingInput } from './input';
import { extraOf, facingPatchSide, type FacingDetails, sidesOf } from './work';

/** The line of stitching, the patch or the strips, the fabric, and the clips. */
export function facingSteps(input: FacingInput, details: FacingDetails): Explanation {
  const toBuy = fabricToBuyStep(input, details.fabric, { means: 'fabric for the facing' });
  return [
    ...lineSteps(input, details),
    ...patchSteps(input, details),
    ...stripSteps(input, details),
    toBuy,
    ...curveSteps(input, details),
  ];
}

function lineSteps(
  { around, hole, seamAllowance, outline }: FacingInput,
  { line }: FacingDetails,
): readonly Step[] {
  if (around === 'outside' || hole === null) return [outlineEdgeStep(outline)];
  const radius = term('r', 'half the hole, as cut', lengthUp(hole.diameter / 2));
  const seam = givenTerm('s', 'seam allowance', seamAllowance);
  return [
    {
      label: 'Opening, across',
      formula: '2 · (r + s)',
      terms: [radius, seam],
      result: lengthUp(hole.diameter + 2 * seamAllowance),
      rule: derived('The facing turns the seam allowance to the back, so the stitching becomes the edge.'),
    },
    {
      label: 'Line of stitching around the hole',
      formula: '2π(r + s)',
      terms: [radius, seam],
      result: lengthUp(line),
      rule: derived('The seam runs s outside the cut edge of the hole.'),
    },
  ];
}

function patchSteps(input: FacingInput, { patch, fabric }: FacingDetails): readonly Step[] {
  if (patch === null) return [];
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  const isAcross = Math.max(patch.width, patch.length) <= input.fabricWidth;
  const bounds = outlineBounds(input.outline);
  const across = (label: string, symbol: string, side: number): Step => ({
    label,
    formula: `${symbol} + 2s, rounded up`,
    terms: [term(symbol, 'of the project', lengthUp(side)), seam],
    result: lengthUp(side + 2 * input.seamAllowance, input.cutStep),
    rule: derived('The facing has the outer edge of the project.'),
  });
  const sides: readonly Step[] =
    input.around === 'hole' && input.hole !== null
      ? [
          {
            label: 'Side of the patch',
            formula: '2 · (r + s + w + e), rounded up',
            terms: [
              term('r', 'half the hole, as cut', lengthUp(input.hole.diameter / 2)),
              seam,
              givenTerm('w', 'width of the facing', input.width),
              givenTerm('e', 'turned under', input.turnedEdge),
            ],
            result: lengthUp(facingPatchSide(input.hole.diameter / 2, input), input.cutStep),
            rule: derived('From the middle of the hole to the outer edge of the facing, on both sides.'),
          },
        ]
      : [across('Width of the patch', 'W', bounds.width), across('Length of the patch', 'L', bounds.length)];
  return [
    ...sides,
    {
      label: 'Fabric for the facing',
      formula: isAcross ? 'min(a, b)' : 'max(a, b)',
      terms: [
        givenTerm('a', 'width of the patch', patch.width),
        givenTerm('b', 'length of the patch', patch.length),
      ],
      result: lengthUp(fabric),
      rule: derived(
        isAcross
          ? 'The longer side lies across the fabric.'
          : 'The longer side lies along the fabric, because it is wider than that.',
      ),
    },
  ];
}

function stripSteps(input: FacingInput, { strips, curve, line }: FacingDetails): readonly Step[] {
  if (strips === null) return [];
  const grain = curve === null ? 'straight' : 'bias';
  const path = term('P', 'line of stitching', lengthUp(line));
  const joined: Step = {
    label: 'Strip needed',
    formula: 'N = P + x',
    terms: [path, givenTerm('x', 'extra for joining the ends', input.extra)],
    result: lengthUp(strips.needed),
    rule: commonPractice('One strip goes all the way around.'),
  };
  const bySides: Step = {
    label: 'Strips needed, end to end',
    formula: 'N = P + 2 · n · x',
    terms: [
      path,
      term('n', 'sides', countQuantity(sidesOf(input), ['side', 'sides'])),
      givenTerm('x', 'extra at each end', input.endExtra),
    ],
    result: lengthUp(line + extraOf(input, curve)),
    rule: commonPractice('Each side has a strip of its own; they overlap at the corners.'),
  };
  return [
    curve === null ? bySides : joined,
    {
      label: 'Strip width',
      formula: 'w + e + s, rounded up',
      terms: [
        givenTerm('w', 'width of the facing', input.width),
        givenTerm('e', 'turned under', input.turnedEdge),
        givenTerm('s', 'seam allowance', input.seamAllowance),
      ],
      result: lengthUp(input.width + input.turnedEdge + input.seamAllowance, input.cutStep),
      rule: derived('From one cut edge to the other.'),
    },
    ...edgeStripsSteps({ ...input, grain }, strips),
  ];
}

function curveSteps(input: FacingInput, { curve, give }: FacingDetails): readonly Step[] {
  if (curve === null) return [];
  const radius = term('R', 'radius of the stitching, at its tightest', lengthDown(curve.radius));
  const every = givenTerm('p', 'from clip to clip', input.clipEvery);
  const gives: readonly Step[] =
    give === null
      ? []
      : [
          {
            label: 'The strip has to give, where it is sewn down',
            formula: 'w ÷ R',
            terms: [givenTerm('w', 'width of the facing', input.width), radius],
            result: percentQuantity(100 * give.share),
            rule: derived('Turned to the back, its other edge lies w away from the stitching.'),
          },
        ];
  return [
    ...gives,
    {
      label: input.around === 'hole' ? 'Clips' : 'Notches',
      formula: 'B ÷ p, rounded up',
      terms: [term('B', 'length of the curve', lengthUp(curve.clips * input.clipEvery)), every],
      result: countQuantity(curve.clips, ['cut', 'cuts'], 'up'),
      rule: commonPractice('Through both seam allowances, to just before the stitching.'),
    },
    {
      label: input.around === 'hole' ? 'A clip opens by' : 'A notch is this wide',
      formula: '2 · p · s ÷ R',
      terms: [every, term('s', 'seam allowance', givenLength(input.seamAllowance)), radius],
      result: fineLength(curve.opening, 'up'),
      rule: derived('The cut edge lies s on one side of the stitching, and once turned s on the other.'),
    },
  ];
}

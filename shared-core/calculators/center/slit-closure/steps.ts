import { assertNever } from '#core/assert-never';
import type { Explanation, Step } from '#core/calculators/explanation';
import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import { countQuantity, fineLength, lengthNearest, lengthUp } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import type { SlitClosureInput } from './input';
import { type Flap, type SlitClosureDetails, spanOf } from './work';

/** Where the places are, what is cut for them, and the flap. */
export function slitClosureSteps(input: SlitClosureInput, details: SlitClosureDetails): Explanation {
  return [
    ...placeSteps(input, details),
    ...partSteps(input, details),
    ...(details.flap === null ? [] : flapSteps(input, details.flap)),
  ];
}

function placeSteps(input: SlitClosureInput, { places, pitch }: SlitClosureDetails): readonly Step[] {
  const span = term('S', 'from the first to the last', lengthNearest(spanOf(input)));
  const gaps = countQuantity(places - 1, ['gap', 'gaps']);
  const pitchStep: Step = {
    label: 'From one place to the next',
    formula: 'S ÷ g',
    terms: [span, term('g', 'gaps', gaps)],
    result: lengthNearest(pitch),
    rule: derived('Each mark is rounded by itself, from the outer edge, so that errors don’t add up.'),
  };
  return [
    {
      label: 'From the first place to the last',
      formula: 'S = L − a − b',
      terms: [
        givenTerm('L', 'length of the slit', input.slit),
        givenTerm('a', 'outer edge to the first', input.first),
        givenTerm('b', 'last to the hole', input.last),
      ],
      result: lengthNearest(spanOf(input)),
      rule: derived('What is left between the ends.'),
    },
    {
      label: 'Gaps between places',
      formula: 'g = S ÷ m, rounded up',
      terms: [span, givenTerm('m', 'at most this far apart', input.apart)],
      result: countQuantity(spanOf(input) / input.apart, ['gap', 'gaps'], 'up'),
      rule: derived('There is one place more than there are gaps.'),
    },
    ...(places === 1 ? [] : [pitchStep]),
  ];
}

function partSteps(input: SlitClosureInput, details: SlitClosureDetails): readonly Step[] {
  const { closing } = input;
  switch (closing.with) {
    case 'ties':
      return [
        {
          label: 'Width to cut a tie',
          formula: '4w, rounded up',
          terms: [givenTerm('w', 'finished width', closing.tieWidth)],
          result: lengthUp(4 * closing.tieWidth, input.cutStep),
          rule: commonPractice('Both edges are folded to the middle, then the strip is folded in half.'),
        },
        {
          label: 'Length to cut a tie',
          formula: 't + f + s, rounded up',
          terms: [
            givenTerm('t', 'finished length', closing.tieLength),
            givenTerm('f', 'folded in at its end', closing.endFold),
            givenTerm('s', 'seam allowance', input.seamAllowance),
          ],
          result: lengthUp(closing.tieLength + closing.endFold + input.seamAllowance, input.cutStep),
          rule: derived('One end is caught in the seam of the binding.'),
        },
        ...tieFabricSteps(input, details),
      ];
    case 'buttons-and-loops':
      return [...loopSteps(input, closing), ...cordSteps(details)];
    case 'buttons-and-buttonholes':
      return [
        {
          label: 'Buttonhole',
          formula: 'd + t',
          terms: [
            givenTerm('d', 'button across', closing.buttonAcross),
            givenTerm('t', 'its thickness', closing.buttonThickness),
          ],
          result: fineLength(closing.buttonAcross + closing.buttonThickness, 'up'),
          rule: commonPractice('Try it on a scrap of the same layers with the same button.'),
        },
      ];
    case 'snaps':
      return [];
    default:
      return assertNever(closing);
  }
}

function tieFabricSteps(input: SlitClosureInput, { parts }: SlitClosureDetails): readonly Step[] {
  if (parts.with !== 'ties') return [];
  return [
    {
      label: 'Ties from a strip across the fabric',
      formula: 'U ÷ c, rounded down',
      terms: [
        givenTerm('U', 'usable fabric width', input.fabricWidth),
        givenTerm('c', 'length to cut', parts.cutLength),
      ],
      result: countQuantity(input.fabricWidth / parts.cutLength, ['tie', 'ties'], 'down'),
      rule: derived('Whole ties only.'),
    },
    {
      label: 'Strips',
      formula: 'n ÷ k, rounded up',
      terms: [
        term('n', 'ties, two at each place', countQuantity(parts.ties, ['tie', 'ties'])),
        term('k', 'ties from a strip', countQuantity(parts.perStrip, ['tie', 'ties'])),
      ],
      result: countQuantity(parts.ties / parts.perStrip, ['strip', 'strips'], 'up'),
      rule: derived('One tie on each side of the slit.'),
    },
    {
      label: 'Fabric for the ties',
      formula: 'q · C',
      terms: [
        term('q', 'strips', countQuantity(parts.strips, ['strip', 'strips'])),
        givenTerm('C', 'width to cut', parts.cutWidth),
      ],
      result: lengthUp(parts.fabric),
      rule: derived('The strips lie one below the other.'),
    },
    fabricToBuyStep(input, parts.fabric, { means: 'fabric for the ties' }),
  ];
}

function loopSteps(
  input: SlitClosureInput,
  closing: Extract<SlitClosureInput['closing'], { with: 'buttons-and-loops' }>,
): readonly Step[] {
  const loop = 2 * (closing.buttonAcross + closing.buttonThickness) + closing.loopEase;
  const length = term('ℓ', 'loop', lengthUp(loop));
  return [
    {
      label: 'Loop, finished',
      formula: 'ℓ = 2(d + t) + e',
      terms: [
        givenTerm('d', 'button across', closing.buttonAcross),
        givenTerm('t', 'its thickness', closing.buttonThickness),
        givenTerm('e', 'ease', closing.loopEase),
      ],
      result: lengthUp(loop),
      rule: derived('A loop has to go all the way around the button as it slips through on edge.'),
    },
    {
      label: 'Length to cut a loop',
      formula: 'ℓ + 2s, rounded up',
      terms: [length, givenTerm('s', 'seam allowance', input.seamAllowance)],
      result: lengthUp(loop + 2 * input.seamAllowance, input.cutStep),
      rule: derived('Both ends are caught in the seam of the binding, side by side.'),
    },
    {
      label: 'Middle of the button from the edge of its side',
      formula: 'ℓ ÷ 2',
      terms: [length],
      result: lengthNearest(loop / 2),
      rule: derived('So far the loop reaches when it is pulled straight.'),
    },
  ];
}

function cordSteps({ places, parts }: SlitClosureDetails): readonly Step[] {
  if (parts.with !== 'buttons-and-loops') return [];
  return [
    {
      label: 'Cord or elastic for the loops',
      formula: 'n · c',
      terms: [
        term('n', 'loops, one at each place', countQuantity(places, ['loop', 'loops'])),
        givenTerm('c', 'length to cut a loop', parts.cutLength),
      ],
      result: lengthUp(parts.cord),
      rule: derived('Laid end to end.'),
    },
  ];
}

function flapSteps(input: SlitClosureInput, flap: Flap): readonly Step[] {
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  return [
    {
      label: 'Width to cut the flap',
      formula: '2o + 2s, rounded up',
      terms: [givenTerm('o', 'overlap', input.overlap), seam],
      result: lengthUp(2 * input.overlap + 2 * input.seamAllowance, input.cutStep),
      rule: derived('It is folded in half along its length, and both cut edges go into the seam.'),
    },
    {
      label: 'Length to cut the flap',
      formula: 'L + 2s, rounded up',
      terms: [givenTerm('L', 'length of the slit', input.slit), seam],
      result: lengthUp(input.slit + 2 * input.seamAllowance, input.cutStep),
      rule: derived('It is sewn shut at both ends.'),
    },
    {
      label: 'Fabric for the flap',
      formula: 'n · C',
      terms: [
        term('n', 'strips across the fabric, joined', countQuantity(flap.strips, ['strip', 'strips'])),
        givenTerm('C', 'width to cut', flap.cutWidth),
      ],
      result: lengthUp(flap.fabric),
      rule: derived('The strips lie one below the other.'),
    },
    fabricToBuyStep(input, flap.fabric, { means: 'fabric for the flap' }),
  ];
}

import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import { assertNever } from '#core/assert-never';
import type { Outline } from '#core/domain/outline';
import type { Explanation, Step, Term } from '../explanation';
import { cornerRadiusOf } from '../outline/outline-measures';
import { countQuantity, lengthDown, lengthUp } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { HangingSleeveInput } from './input';
import { cutLengthOf, type HangingSleeveDetails, seamsOf } from './work';

/** The width at the sleeve, its sizes, the rod and the fabric. */
export function hangingSleeveSteps(input: HangingSleeveInput, details: HangingSleeveDetails): Explanation {
  return [...lengthSteps(input, details), ...depthSteps(input, details), ...fabricSteps(input, details)];
}

function lengthSteps(input: HangingSleeveInput, details: HangingSleeveDetails): readonly Step[] {
  const span = term('S', 'from end to end', lengthDown(details.span));
  return [
    {
      label: 'Width of the quilt at the top of the sleeve',
      ...widthFormula(input.outline, givenTerm('y', 'below the top edge', input.down)),
      result: lengthDown(details.width),
      rule: derived('The sleeve must end inside the quilt at its upper corners.'),
    },
    {
      label: 'From end to end',
      formula: 'S = A − 2g',
      terms: [
        term('A', 'width of the quilt there', lengthDown(details.width)),
        givenTerm('g', 'gap at each side', input.sideGap),
      ],
      result: lengthDown(details.span),
      rule: commonPractice('The sleeve ends about 1 in from each side, so that it doesn’t show.'),
    },
    {
      label: 'Finished length of a sleeve',
      formula: '(S − (n − 1) · m) ÷ n',
      terms: [
        span,
        term('n', 'sleeves', countQuantity(input.sleeves, ['sleeve', 'sleeves'])),
        givenTerm('m', 'gap between sleeves', input.gap),
      ],
      result: lengthDown(details.length),
      rule: derived('Sleeves of one length, with gaps between them.'),
    },
    {
      label: 'Cut length',
      formula: 'L + 2h, rounded down',
      terms: [
        term('L', 'finished length', lengthDown(details.length)),
        givenTerm('h', 'hem at each end', input.hem),
      ],
      result: cutLengthOf(input, details.length),
      rule: derived('Rounded down, since a sleeve must not show beside the quilt.'),
    },
    {
      label: 'Rod',
      formula: 'S + r',
      terms: [span, givenTerm('r', 'longer by', input.rodExtra)],
      result: lengthDown(details.rod),
      rule: commonPractice('The rod reaches a little past the sleeve at both ends and not past the quilt.'),
    },
  ];
}

function depthSteps(input: HangingSleeveInput, details: HangingSleeveDetails): readonly Step[] {
  const depth = givenTerm('d', 'depth of the sleeve', input.depth);
  return [
    {
      label: 'Cut depth',
      formula: '2d + 2s, rounded up',
      terms: [depth, givenTerm('s', 'seam allowance', input.seamAllowance)],
      result: lengthUp(2 * input.depth + 2 * input.seamAllowance, input.cutStep),
      rule: derived('A tube has two layers and one seam.'),
    },
    {
      label: 'Sew its two long edges this far apart',
      formula: 'd − e ÷ 2',
      terms: [depth, givenTerm('e', 'ease', input.ease)],
      result: lengthDown(details.sewnApart),
      rule: derived('The layer behind the rod is shorter than the one in front by the ease.'),
    },
  ];
}

function fabricSteps(input: HangingSleeveInput, details: HangingSleeveDetails): readonly Step[] {
  const cut = givenTerm('C', 'cut depth', details.cutDepth);
  return [
    {
      label: 'Strips across the fabric',
      formula: '(k · ℓ − j) ÷ (U − j), rounded up, at least one',
      terms: [
        term('k', 'sleeves', countQuantity(input.sleeves, ['sleeve', 'sleeves'])),
        givenTerm('ℓ', 'cut length', details.cutLength),
        givenTerm('U', 'usable fabric width', input.fabricWidth),
        term('j', 'what a straight join takes', lengthUp(seamsOf(input))),
      ],
      result: countQuantity(details.strips, ['strip', 'strips'], 'up'),
      rule: derived('Strips are joined where one is too short.'),
    },
    {
      label: 'Fabric for the sleeve',
      formula: 'n · C',
      terms: [term('n', 'strips', countQuantity(details.strips, ['strip', 'strips'])), cut],
      result: lengthUp(details.fabric),
      rule: derived('They lie one below the other.'),
    },
    fabricToBuyStep(input, details.fabric, { means: 'fabric for the sleeve' }),
  ];
}

function widthFormula(outline: Outline, down: Term): Pick<Step, 'formula' | 'terms'> {
  switch (outline.shape) {
    case 'square':
      return { formula: 'A = a', terms: [givenTerm('a', 'side', outline.side)] };
    case 'rectangle':
    case 'sides':
      return { formula: 'A = W', terms: [givenTerm('W', 'width', outline.width)] };
    case 'circle':
      return {
        formula: 'A = 2 · √(y · (D − y))',
        terms: [givenTerm('D', 'diameter', outline.diameter), down],
      };
    case 'ellipse':
      return {
        formula: 'A = 2 · W · √(y · (L − y)) ÷ L',
        terms: [givenTerm('W', 'width', outline.width), givenTerm('L', 'length', outline.length), down],
      };
    case 'rounded':
      return {
        formula: 'A = W − 2 · (r − √(r² − max(0, r − y)²))',
        terms: [
          givenTerm('W', 'width', outline.width),
          term('r', 'radius of the corners', lengthDown(cornerRadiusOf(outline))),
          down,
        ],
      };
    case 'hexagon':
      return {
        formula: 'A = (F + 2 · y) ÷ √3',
        terms: [givenTerm('F', 'across the flats', outline.acrossFlats), down],
      };
    case 'octagon':
      return {
        formula: 'A = min(F, F · (√2 − 1) + 2 · y)',
        terms: [givenTerm('F', 'across the flats', outline.acrossFlats), down],
      };
    default:
      return assertNever(outline);
  }
}

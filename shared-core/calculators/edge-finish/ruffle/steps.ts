import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import { outlineEdgeStep } from '#core/calculators/binding/outer-binding/edge-step';
import type { Explanation, Step } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthNearest,
  lengthUp,
  numberQuantity,
} from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import type { RuffleInput } from './input';
import { cutWidthOf, endsOf, joinOf, type RuffleDetails } from './work';

/** The flat strip, its fullness, its cut width and the fabric. */
export function ruffleSteps(input: RuffleInput, details: RuffleDetails): Explanation {
  return [
    ...(input.around === 'all-around' ? [outlineEdgeStep(input.outline)] : []),
    ...flatSteps(input, details),
    ...freeEdgeSteps(input, details),
    cutWidthStep(input),
    ...fabricSteps(input, details),
  ];
}

function flatSteps(input: RuffleInput, { edge, pleats, flat }: RuffleDetails): readonly Step[] {
  const along = term('P', 'edge', lengthUp(edge));
  if (input.ruffle.style === 'gathers') {
    return [
      {
        label: 'Strip before it is gathered',
        formula: 'T = f · P',
        terms: [term('f', 'fullness', numberQuantity(input.ruffle.fullness)), along],
        result: lengthUp(flat),
        rule: commonPractice('1.5 to 3 times the edge; the finer the fabric, the more.'),
      },
    ];
  }
  if (pleats === null) return [];
  const count = term('n', 'pleats', countQuantity(pleats.count, ['pleat', 'pleats']));
  return [
    {
      label: 'Pleats',
      formula: 'n = P ÷ p, rounded up, at least one',
      terms: [along, givenTerm('p', 'from pleat to pleat, at most', input.ruffle.spacing)],
      result: countQuantity(pleats.count, ['pleat', 'pleats'], 'up'),
      rule: derived('A whole number, spread evenly.'),
    },
    {
      label: 'From pleat to pleat',
      formula: 'P ÷ n',
      terms: [along, count],
      result: lengthNearest(pleats.pitch),
      rule: derived('On the finished edge.'),
    },
    {
      label: 'Strip before it is pleated',
      formula: `T = P + ${String(pleats.folds)} · n · d`,
      terms: [along, count, givenTerm('d', 'depth of a pleat', pleats.depth)],
      result: lengthUp(flat),
      rule: derived(
        pleats.folds === 2
          ? 'A knife pleat takes its depth twice: under and back.'
          : 'A box pleat is two knife pleats that face each other.',
      ),
    },
  ];
}

function freeEdgeSteps(input: RuffleInput, details: RuffleDetails): readonly Step[] {
  const { fullnessAtFreeEdge, edge, flat } = details;
  if (fullnessAtFreeEdge === null) return [];
  return [
    {
      label: 'Fullness left at the free edge',
      formula: 'T ÷ (P + 2π · h)',
      terms: [
        term('T', 'flat strip', lengthUp(flat)),
        term('P', 'edge', lengthUp(edge)),
        givenTerm('h', 'finished width', input.width),
      ],
      result: numberQuantity(fullnessAtFreeEdge),
      rule: derived(
        'Once around, curves and corners together turn a full circle, so the free edge is 2πh longer.',
      ),
    },
  ];
}

function cutWidthStep(input: RuffleInput): Step {
  const width = givenTerm('h', 'finished width', input.width);
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  return input.layers === 'folded'
    ? {
        label: 'Cut width',
        formula: '2h + 2s, rounded up',
        terms: [width, seam],
        result: cutWidthOf(input),
        rule: derived('Two layers, folded at the free edge, each with a seam allowance.'),
      }
    : {
        label: 'Cut width',
        formula: 'h + s + m, rounded up',
        terms: [width, seam, givenTerm('m', 'hem', input.hem)],
        result: cutWidthOf(input),
        rule: derived('One layer with a seam allowance and a hem.'),
      };
}

function fabricSteps(input: RuffleInput, details: RuffleDetails): readonly Step[] {
  const isRing = input.around === 'all-around';
  const count = countQuantity(details.strips, ['strip', 'strips'], 'up');
  return [
    {
      label: 'Strip needed',
      formula: 'N = T + x',
      terms: [
        term('T', 'flat strip', lengthUp(details.flat)),
        term('x', isRing ? 'the join that closes the ring' : 'a hem at each end', lengthUp(endsOf(input))),
      ],
      result: lengthUp(details.needed),
      rule: derived('With what its ends take.'),
    },
    {
      label: 'Strips across the fabric',
      formula: '(N − j) ÷ (U − j), rounded up, at least one',
      terms: [
        term('N', 'strip needed', lengthUp(details.needed)),
        givenTerm('U', 'usable fabric width', input.fabricWidth),
        term('j', 'what a straight join takes', lengthUp(joinOf(input))),
      ],
      result: count,
      rule: derived('Every strip but the first loses one join.'),
    },
    {
      label: 'Fabric for the strips',
      formula: 'n · C',
      terms: [term('n', 'strips', count), term('C', 'cut width', givenLength(details.cutWidth))],
      result: lengthUp(details.fabric),
      rule: derived('They lie one below the other.'),
    },
    fabricToBuyStep(input, details.fabric, { means: 'fabric for the strips' }),
  ];
}

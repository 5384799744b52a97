import type { Quantity, Step, Term } from '../explanation';
import { countQuantity, lengthUp, minutesQuantity, numberQuantity } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { HandFinishInput } from './input';
import type { HandSewnPart } from './work';

export const PART_NAMES: Readonly<Record<HandSewnPart['part'], string>> = {
  outer: 'Outer edge',
  inner: 'Around the hole',
  slit: 'Both sides of the slit',
};

/** At the maker's own speed, rounded up to the next minute. */
export function minutesFor(length: number, { perHour }: HandFinishInput) {
  return minutesQuantity((60 * length) / perHour);
}

const PART_RULES: Readonly<Record<HandSewnPart['part'], Pick<Step, 'formula' | 'rule'>>> = {
  outer: {
    formula: 'edge − 2d × Σ 1 ÷ tan(a/2) over its corners; edge − 2πd for a curve',
    rule: derived('The line runs d inside the finished edge, parallel to it.'),
  },
  inner: {
    formula: '2π(r + d)',
    rule: derived('The line runs d outside the cut edge of the hole.'),
  },
  slit: {
    formula: '2 × (from the edge to the hole)',
    rule: derived('Counted from edge to edge, so it is a little too long where slit and ring meet.'),
  },
};

export function lengthSteps(
  parts: readonly HandSewnPart[],
  input: HandFinishInput,
  length: number,
): readonly Step[] {
  return [
    ...parts.map(({ part, length: partLength }): Step => ({
      label: PART_NAMES[part],
      ...PART_RULES[part],
      terms: partTerms(part, input),
      result: lengthUp(partLength),
    })),
    {
      label: 'Length to hand-sew',
      formula: 'the sum of its parts',
      terms: [],
      result: lengthUp(length),
      rule: derived('All of it is sewn by hand.'),
    },
  ];
}

function partTerms(part: HandSewnPart['part'], { seam, backCover, hole }: HandFinishInput): readonly Term[] {
  const inset = term('d', 'seam and cover on the back', lengthUp(seam + backCover));
  if (part === 'outer') return [inset];
  if (part === 'slit' || hole === null) return [];
  return [term('r', 'half the hole', lengthUp(hole.diameter / 2)), inset];
}

export function workSteps(input: HandFinishInput, length: number, threads: Quantity): readonly Step[] {
  const seam = term('S', 'length to hand-sew', lengthUp(length));
  return [
    {
      label: 'Hand sewing',
      formula: 'S ÷ rate',
      terms: [seam, givenTerm('rate', 'sewn in an hour', input.perHour)],
      result: minutesFor(length, input),
      rule: commonPractice(
        'There is no published time for sewing a binding down by hand, so use your own speed.',
      ),
    },
    {
      label: 'Lengths of thread',
      formula: 'S × f ÷ (t − e), rounded up',
      terms: [
        seam,
        term('f', 'thread per length of seam', numberQuantity(input.threadFactor)),
        givenTerm('t', 'thread in the needle', input.threadLength),
        givenTerm('e', 'lost to knots and tails', input.threadTail),
      ],
      result: threads,
      rule: commonPractice('Thread of 18 to 24 in. Longer thread wears out before it is used up.'),
    },
    {
      label: 'Stitches',
      formula: 'S ÷ p, rounded up',
      terms: [seam, givenTerm('p', 'from stitch to stitch', input.stitchLength)],
      result: countQuantity(length / input.stitchLength, ['stitch', 'stitches'], 'up'),
      rule: derived('One stitch for every step along the seam.'),
    },
  ];
}

import type { Quantity, Step } from '../explanation';
import { countQuantity, givenLength, lengthQuantity, minutesQuantity, numberQuantity } from '../quantities';
import type { HandFinishInput } from './input';
import type { HandSewnPart } from './work';

export const PART_NAMES: Readonly<Record<HandSewnPart['part'], string>> = {
  outer: 'Outer edge',
  inner: 'Round the hole',
  slit: 'Both sides of the slit',
};

/** At the maker's own rate, up to the next whole minute. */
export function minutesFor(length: number, { perHour }: HandFinishInput) {
  return minutesQuantity((60 * length) / perHour);
}

export function lengthSteps(
  parts: readonly HandSewnPart[],
  input: HandFinishInput,
  length: number,
): readonly Step[] {
  const inset = {
    symbol: 'd',
    means: 'seam and cover on the back',
    quantity: lengthQuantity(input.seam + input.backCover, { direction: 'up' }),
  };
  const rules: Readonly<Record<HandSewnPart['part'], Pick<Step, 'formula' | 'rule'>>> = {
    outer: {
      formula: 'edge − 2d × Σ 1 ÷ tan(a/2) over its corners; edge − 2πd where it is a curve',
      rule: { kind: 'derived', says: 'The line runs d inside the finished edge, parallel to it.' },
    },
    inner: {
      formula: '2π(r + d)',
      rule: { kind: 'derived', says: 'The line runs d outside the cut edge of the hole.' },
    },
    slit: {
      formula: '2 × (from the edge to the hole)',
      rule: {
        kind: 'derived',
        says: 'Counted from edge to edge, so a little over where slit and ring meet.',
      },
    },
  };
  const hole = input.hole;
  const radius =
    hole === null
      ? []
      : [
          {
            symbol: 'r',
            means: 'half the hole',
            quantity: lengthQuantity(hole.diameter / 2, { direction: 'up' }),
          },
        ];
  return [
    ...parts.map(({ part, length: partLength }): Step => ({
      label: PART_NAMES[part],
      ...rules[part],
      terms: part === 'inner' ? [...radius, inset] : part === 'outer' ? [inset] : [],
      result: lengthQuantity(partLength, { direction: 'up' }),
    })),
    {
      label: 'Seam on the back',
      formula: 'the sum of its parts',
      terms: [],
      result: lengthQuantity(length, { direction: 'up' }),
      rule: { kind: 'derived', says: 'All of it is sewn by hand.' },
    },
  ];
}

export function workSteps(input: HandFinishInput, length: number, threads: Quantity): readonly Step[] {
  const seam = {
    symbol: 'S',
    means: 'seam on the back',
    quantity: lengthQuantity(length, { direction: 'up' }),
  };
  return [
    {
      label: 'Hand sewing',
      formula: 'S ÷ rate',
      terms: [seam, { symbol: 'rate', means: 'sewn in an hour', quantity: givenLength(input.perHour) }],
      result: minutesFor(length, input),
      rule: {
        kind: 'common practice',
        says: 'No published time for sewing binding by hand was found: the rate is your own.',
      },
    },
    {
      label: 'Thread in the needle',
      formula: 'S × f ÷ (t − e), up to the next whole length',
      terms: [
        seam,
        { symbol: 'f', means: 'thread for one length of seam', quantity: numberQuantity(input.threadFactor) },
        { symbol: 't', means: 'thread in the needle', quantity: givenLength(input.threadLength) },
        { symbol: 'e', means: 'not sewn with', quantity: givenLength(input.threadTail) },
      ],
      result: threads,
      rule: {
        kind: 'common practice',
        says: 'Thread of 18 to 24 in; longer thread wears before it is used up.',
      },
    },
    {
      label: 'Stitches',
      formula: 'S ÷ p, up to the next whole stitch',
      terms: [
        seam,
        { symbol: 'p', means: 'from stitch to stitch', quantity: givenLength(input.stitchLength) },
      ],
      result: countQuantity(length / input.stitchLength, ['stitch', 'stitches'], 'up'),
      rule: { kind: 'derived', says: 'One stitch for every step along the seam.' },
    },
  ];
}

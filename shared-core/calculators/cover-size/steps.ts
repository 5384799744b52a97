import type { Length } from '#core/units/length';
import type { Explanation, Step, Term } from '../explanation';
import { givenLength, lengthNearest, lengthUp, percentQuantity } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { CoverSizeInput } from './input';
import { type CoveredThing, type CoverSize, washedBounds } from './work';

/** Each side in place, then as it has to be made, then how a corner hangs. */
export function coverSizeSteps(input: CoverSizeInput, over: CoveredThing, size: CoverSize): Explanation {
  return [
    ...placeSteps(input, over, size),
    ...makeSteps(input, over, size),
    ...topSteps(input, over, size),
    ...cornerSteps(input, over, size),
  ];
}

/** The project as it is: what it washes to. */
export function washedSteps(input: CoverSizeInput): Explanation {
  const { bounds, width, length } = washedBounds(input);
  const step = (label: string, side: number, percent: number, washed: number): Step => ({
    label,
    formula: 'S · (1 − p)',
    terms: [term('S', 'as made', lengthUp(side)), term('p', 'shrinks in the wash', percentQuantity(percent))],
    result: lengthNearest(washed),
    rule: derived('Washed, it loses this part of the size it was made in.'),
  });
  return [
    step('Width in place', bounds.width, input.acrossPercent, width),
    step('Length in place', bounds.length, input.alongPercent, length),
  ];
}

const HANGS = derived('The top, and what hangs down on both sides of it.');

function placeSteps(
  { drop }: CoverSizeInput,
  over: CoveredThing,
  { width, length }: CoverSize,
): readonly Step[] {
  const hangs = givenTerm('d', 'hangs down', drop);
  const sideways = (
    label: string,
    symbol: string,
    means: Term['means'],
    side: number,
    result: number,
  ): Step => ({
    label,
    formula: `${symbol} + 2d`,
    terms: [term(symbol, means, lengthUp(side)), hangs],
    result: lengthUp(result),
    rule: HANGS,
  });
  switch (over.over) {
    case 'round':
      return [sideways('Across, in place', 'D', 'the table, across', over.diameter, width)];
    case 'rectangle':
      return [
        sideways('Width in place', 'W', 'width of the table', over.width, width),
        sideways('Length in place', 'L', 'length of the table', over.length, length),
      ];
    case 'bed':
      return [
        sideways('Width in place', 'W', 'width of the mattress', over.width, width),
        {
          label: 'Length in place',
          formula: 'L + f + p',
          terms: [
            givenTerm('L', 'length of the mattress', over.length),
            givenTerm('f', 'hangs down at the foot', over.footDrop),
            givenTerm('p', 'for the pillows', over.pillowFold),
          ],
          result: givenLength(length),
          rule: derived('Nothing hangs down at the head.'),
        },
      ];
  }
}

function topSteps(
  { cutStep, quiltingPercent }: CoverSizeInput,
  over: CoveredThing,
  { makeWidth, makeLength }: CoverSize,
): readonly Step[] {
  if (quiltingPercent === 0) return [];
  const step = (label: string, side: Length): Step => ({
    label,
    formula: 'M ÷ (1 − q), rounded up',
    terms: [
      givenTerm('M', 'as made', side),
      term('q', 'shrinks when it is quilted', percentQuantity(quiltingPercent)),
    ],
    result: lengthUp(side / (1 - quiltingPercent / 100), cutStep),
    rule: commonPractice('Quilting draws the layers up by some percent.'),
  });
  return over.over === 'round'
    ? [step('Top, before it is quilted', makeWidth)]
    : [step('Top before quilting, width', makeWidth), step('Top before quilting, length', makeLength)];
}

function makeSteps({ cutStep }: CoverSizeInput, over: CoveredThing, size: CoverSize): readonly Step[] {
  const step = (label: string, side: number, percent: number): Step => ({
    label,
    formula: 'S ÷ (1 − p), rounded up',
    terms: [
      term('S', 'in place', lengthUp(side)),
      term('p', 'shrinks in the wash', percentQuantity(percent)),
    ],
    result: lengthUp(side / (1 - percent / 100), cutStep),
    rule: derived('Washed, it loses this part of the size it was made in.'),
  });
  const [across, along] = size.percents;
  return over.over === 'round'
    ? [step('Make it this far across', size.width, across)]
    : [step('Make it this wide', size.width, across), step('Make it this long', size.length, along)];
}

function cornerSteps(
  { drop }: CoverSizeInput,
  over: CoveredThing,
  { cornerDrop }: CoverSize,
): readonly Step[] {
  if (cornerDrop === null) return [];
  const foot = over.over === 'bed' ? over.footDrop : drop;
  return [
    {
      label: 'A square corner hangs down',
      formula: '√(d² + f²)',
      terms: [
        givenTerm('d', 'hangs down at the side', drop),
        givenTerm('f', over.over === 'bed' ? 'hangs down at the foot' : 'hangs down at the end', foot),
      ],
      result: lengthUp(cornerDrop),
      rule: derived(
        'The corner lies diagonally over the edge. Round the corners if it would touch the floor.',
      ),
    },
  ];
}

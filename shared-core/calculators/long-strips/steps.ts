import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import { joinCost } from '../binding/strip-joins';
import type { Explanation, Step } from '../explanation';
import { countQuantity, givenLength, lengthUp } from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { LongStripsInput } from './input';
import { cutLength, type LongStripsDetails } from './work';

/** Cut sizes, the fabric along and across, and what to buy for the way chosen. */
export function longStripsSteps(input: LongStripsInput, details: LongStripsDetails): Explanation {
  const chosen = input.way === 'across' && details.across !== null ? details.across : details.along;
  return [
    ...sizeSteps(input, details),
    ...alongSteps(input, details),
    ...acrossSteps(input, details),
    fabricToBuyStep(input, chosen.fabric, { means: `cut ${input.way} the fabric` }),
  ];
}

function sizeSteps(input: LongStripsInput, { strips }: LongStripsDetails): readonly Step[] {
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  return [
    {
      label: 'Cut width',
      formula: 'B + 2s, rounded up',
      terms: [givenTerm('B', 'finished width', input.stripWidth), seam],
      result: lengthUp(input.stripWidth + 2 * input.seamAllowance, input.cutStep),
      rule: derived('A seam allowance on both sides.'),
    },
    ...strips.map(({ name, finished }): Step => ({
      label: `Length to cut now: ${name.toLowerCase()}`,
      formula: 'L + 2s + x, rounded up',
      terms: [
        term('L', 'finished length', lengthUp(finished)),
        seam,
        givenTerm('x', 'extra length', input.extraLength),
      ],
      result: cutLength(input, finished),
      rule: commonPractice('The extra is trimmed off once the top is measured through its middle.'),
    })),
  ];
}

function alongSteps(input: LongStripsInput, { width, along }: LongStripsDetails): readonly Step[] {
  return [
    {
      label: 'Strips side by side along the fabric',
      formula: 'U ÷ W, rounded down',
      terms: [givenTerm('U', 'usable fabric width', input.fabricWidth), givenTerm('W', 'cut width', width)],
      result: countQuantity(input.fabricWidth / width, ['strip', 'strips'], 'down'),
      rule: derived('They lie beside the selvage, next to each other.'),
    },
    {
      label: 'Fabric for strips cut along it',
      formula: 'the sum of its parts',
      terms: [
        term(
          'r',
          'rows',
          countQuantity(
            along.rows.reduce((sum, { rows }) => sum + rows, 0),
            ['row', 'rows'],
          ),
        ),
      ],
      result: lengthUp(along.fabric),
      rule: derived('Each row is as long as its longest strip. The longest strips share a row.'),
    },
  ];
}

function acrossSteps(input: LongStripsInput, { width, across }: LongStripsDetails): readonly Step[] {
  if (across === null) return [];
  const cost = joinCost(input.join, width, input.seamAllowance);
  return [
    {
      label: 'Strips cut across the fabric and joined',
      formula: '(T − j) ÷ (U − j), rounded up, at least one',
      terms: [
        term('T', 'all strips, end to end', givenLength(lengthUp(across.needed).rounded)),
        givenTerm('U', 'usable fabric width', input.fabricWidth),
        term('j', 'what a join takes', lengthUp(cost)),
      ],
      result: countQuantity(across.strips, ['strip', 'strips'], 'up'),
      rule: derived('All are joined into one strip, and the strips are cut from it.'),
    },
    {
      label: 'Fabric for strips cut across it',
      formula: 'n · W',
      terms: [
        term('n', 'strips', countQuantity(across.strips, ['strip', 'strips'])),
        givenTerm('W', 'cut width', width),
      ],
      result: lengthUp(across.fabric),
      rule: derived('They lie one below the other.'),
    },
  ];
}

import type { Explanation } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthUp, wordsQuantity } from '#core/calculators/quantities';
import { derived, givenTerm, term } from '#core/calculators/working/terms';
import type { BiasStripsDetails, BiasStripsInput } from './input';
import { slantedJoinCost } from './work';

/** The strips, what their joins take, and what is left. */
export function biasStripsSteps(
  input: Pick<BiasStripsInput, 'stripWidth' | 'seamAllowance'>,
  details: Pick<BiasStripsDetails, 'strips' | 'ends' | 'gives'>,
): Explanation {
  const total = lengthDown(details.strips.reduce((sum, { middle }) => sum + middle, 0));
  const join = lengthUp(slantedJoinCost(input.seamAllowance));
  const strips = term('n', 'strips', countQuantity(details.strips.length, ['strip', 'strips']));
  return [
    {
      label: 'All strips, along their middles',
      formula: 'S = ℓ₁ + ℓ₂ + … + ℓₙ',
      terms: [strips, term('ends', 'direction of all ends', wordsQuantity(`${details.ends} the fabric`))],
      result: total,
      rule: derived(
        'The longest slanted strip that fits each band. All ends are on the same grain, so any two strips can be joined.',
      ),
    },
    {
      label: 'A join',
      formula: 'j = 2s√2',
      terms: [givenTerm('s', 'seam allowance', input.seamAllowance)],
      result: join,
      rule: derived('The seam runs at 45° to the strip, so each seam allowance takes s√2 of its length.'),
    },
    {
      label: 'Joined, with both ends cut square',
      formula: 'S − (n − 1) · j − w',
      terms: [
        term('S', 'all strips', total),
        strips,
        term('j', 'a join', join),
        givenTerm('w', 'strip width', input.stripWidth),
      ],
      result: lengthDown(details.gives),
      rule: derived('Squaring a slanted end takes half a strip width.'),
    },
  ];
}

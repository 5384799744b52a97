import type { Explanation } from '#core/calculators/explanation';
import { fineLength } from '#core/calculators/quantities';
import { derived, givenTerm } from '#core/calculators/working/terms';
import type { Found } from './found';

const DIGITS = '₀₁₂₃₄₅₆₇₈₉';

/** Each length under a symbol of its own: ℓ₁, ℓ₂ and so on. */
function symbolOf(index: number): string {
  return `ℓ${Array.from(String(index + 1), (digit) => DIGITS[Number(digit)] ?? '').join('')}`;
}

/** Whether the lengths fit together, and where the center is. */
export function centerFindSteps({ lengths, closure, working }: Found): Explanation {
  return [
    {
      label: 'Lengths that fit together',
      formula: 'the smallest change of one length alone',
      terms: lengths.map(({ words, measured }, index) => givenTerm(symbolOf(index), words, measured)),
      result: fineLength(closure.error ?? 0, 'nearest'),
      rule: derived(
        'Each length also follows from the others. The result is the smallest change that one length alone would need. The center is then taken from lengths changed as little as possible.',
      ),
    },
    ...working,
  ];
}

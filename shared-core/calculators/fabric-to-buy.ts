import type { Length } from '#core/units/length';
import type { LengthQuantity, Step } from './explanation';
import { lengthUp, percentQuantity, yardageUp } from './quantities';
import { commonPractice, term } from './working/terms';

interface Buying {
  /** In percent. */
  readonly safetyExtra: number;
  /** What shops cut fabric by. */
  readonly yardageStep: Length;
}

/** A length of fabric with the safety extra, rounded up to what shops cut. In 1/320 mm. */
export function fabricToBuy({ safetyExtra, yardageStep }: Buying, fabric: number): LengthQuantity {
  return yardageUp(fabric * (1 + safetyExtra / 100), yardageStep);
}

/** The step that adds the extra to a length of fabric, which is called `symbol` and `means` this. */
export function fabricToBuyStep(
  input: Buying,
  fabric: number,
  { symbol = 'F', means }: { readonly symbol?: string; readonly means: string },
): Step {
  return {
    label: 'Fabric to buy',
    formula: `${symbol} · (1 + e), rounded up`,
    terms: [
      term(symbol, means, lengthUp(fabric)),
      term('e', 'safety extra', percentQuantity(input.safetyExtra)),
    ],
    result: fabricToBuy(input, fabric),
    rule: commonPractice('A little more for squaring up and mistakes.'),
  };
}

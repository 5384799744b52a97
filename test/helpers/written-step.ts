import type { Step } from '#core/calculators/explanation';
import { formatQuantity, type QuantityStyle } from '#core/calculators/format-quantity';
import { currencyFromCode } from '#core/units/money';

const INCH: QuantityStyle = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
};

/** A step of the working as a maker reads it: its label, the numbers put in, and the result. */
export function writtenStep({ label, terms, result }: Step): string {
  const numbers = terms.map(({ symbol, quantity }) => `${symbol} = ${formatQuantity(quantity, INCH)}`);
  return `${label}: ${numbers.join(', ')}: ${formatQuantity(result, INCH)}`;
}

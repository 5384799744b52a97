import { assertNever } from '#core/assert-never';
import { decimalText } from '#core/units/decimal-text';
import { formatArea } from '#core/units/format-area';
import { formatExactLength, formatLength, formatYardage } from '#core/units/format-length';
import { formatMoney } from '#core/units/format-money';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { type CurrencyCode, moneyFromMinor } from '#core/units/money';
import type { LengthDisplay } from '#core/units/unit-system';
import type { LengthQuantity, Quantity, Sentence } from './explanation';

/** How this reader wants quantities written; screen, paper and command line each pass their own. */
export interface QuantityStyle {
  readonly display: LengthDisplay;
  readonly currency: CurrencyCode;
  readonly locale: string;
}

/** The value the maker uses, rounded and with its unit: `9½ in`, `1⅜ yd`, `7 strips`, `2 h 20 min`. */
export function formatQuantity(quantity: Quantity, style: QuantityStyle): string {
  switch (quantity.kind) {
    case 'length':
      return formatLengthQuantity(quantity, style.display);
    case 'size':
      return joinSides(formatQuantity(quantity.width, style), formatQuantity(quantity.length, style));
    case 'count':
      return `${decimalText(quantity.rounded, 0)} ${quantity.of[quantity.rounded === 1 ? 0 : 1]}`.trim();
    case 'area':
      return formatArea(quantity.exact, style.display);
    case 'percent':
      return `${minusSign(decimalText(quantity.exact, 1))}%`;
    case 'money':
      return formatMoney(moneyFromMinor(quantity.rounded, style.currency), style.locale);
    case 'minutes':
      return formatMinutes(minutesFromWhole(quantity.rounded));
    case 'degrees':
      return `${minusSign(decimalText(quantity.exact, 1))}°`;
    case 'number':
      return minusSign(decimalText(quantity.exact, 4));
    case 'words':
      return quantity.text;
    default:
      return assertNever(quantity);
  }
}

/** The value before rounding, to stand beside the rounded one; null where nothing was rounded that could be seen. */
export function formatExactQuantity(quantity: Quantity, style: QuantityStyle): string | null {
  switch (quantity.kind) {
    case 'length':
      return isExact(quantity) ? null : formatExactLength(quantity.exact, style.display);
    case 'size': {
      if (isExact(quantity.width) && isExact(quantity.length)) return null;
      const { width, length } = quantity;
      return joinSides(
        formatExactLength(width.exact, style.display),
        formatExactLength(length.exact, style.display),
      );
    }
    case 'count':
    case 'minutes':
      return isWhole(quantity) ? null : minusSign(decimalText(quantity.exact, 3));
    case 'money':
      return isWhole(quantity) ? null : `${minusSign(decimalText(quantity.exact, 3))} minor units`;
    case 'area':
    case 'percent':
    case 'degrees':
    case 'number':
    case 'words':
      return null;
    default:
      return assertNever(quantity);
  }
}

/** The sentence with every `{name}` replaced by its quantity. Throws RangeError when a name has no quantity. */
export function formatSentence(sentence: Sentence, style: QuantityStyle): string {
  return sentence.says.replace(/\{(\w+)\}/g, (_match, name: string) => {
    const quantity = Object.hasOwn(sentence.values, name) ? sentence.values[name] : undefined;
    if (quantity === undefined) throw new RangeError(`No quantity named ${name}`);
    return formatQuantity(quantity, style);
  });
}

/** Where the reader's step is coarser than the calculator's, the same direction is kept, so that it stays safe. */
function formatLengthQuantity(quantity: LengthQuantity, display: LengthDisplay): string {
  if (quantity.use === 'yardage') return formatYardage(quantity.rounded, display);
  return formatLength(
    quantity.rounded,
    display,
    quantity.rounding === 'none' ? 'nearest' : quantity.rounding,
  );
}

function isExact({ exact, rounded }: LengthQuantity): boolean {
  return Math.abs(exact - rounded) < 1e-3;
}

/** Whether the three decimals that would be written are all zero. */
function isWhole({ exact, rounded }: { readonly exact: number; readonly rounded: number }): boolean {
  return Math.abs(exact - rounded) < 5e-4;
}

/** `9½ × 12 in`: the unit once where both sides share it. */
function joinSides(width: string, length: string): string {
  const unit = length.slice(length.lastIndexOf(' '));
  return `${width.endsWith(unit) ? width.slice(0, -unit.length) : width} × ${length}`;
}

function minusSign(text: string): string {
  return text.replace('-', '−');
}

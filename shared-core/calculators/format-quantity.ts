import { assertNever } from '#core/assert-never';
import { decimalText } from '#core/units/decimal-text';
import { formatArea } from '#core/units/format-area';
import {
  formatExactLength,
  formatFineLength,
  formatLength,
  formatYardage,
  shownLength,
} from '#core/units/format-length';
import { formatMoney } from '#core/units/format-money';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { type CurrencyCode, moneyFromMinor } from '#core/units/money';
import type { RoundingDirection } from '#core/units/rounding';
import type { LengthDisplay } from '#core/units/unit-system';
import type { LengthQuantity, Quantity, Sentence } from './explanation';

/** How this reader wants quantities written. Screen, paper and command line each pass their own. */
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

/**
 * The value before rounding, to show next to the rounded one; null if rounding changed nothing visible. Money has none: nobody
 * pays a fraction of a cent.
 */
export function formatExactQuantity(quantity: Quantity, style: QuantityStyle): string | null {
  switch (quantity.kind) {
    case 'length':
      return isExact(quantity, style.display) ? null : formatExactLength(quantity.exact, style.display);
    case 'size': {
      const { width, length } = quantity;
      if (isExact(width, style.display) && isExact(length, style.display)) return null;
      return joinSides(
        formatExactLength(width.exact, style.display),
        formatExactLength(length.exact, style.display),
      );
    }
    case 'count':
    case 'minutes':
      return isWhole(quantity) ? null : minusSign(decimalText(quantity.exact, 3));
    case 'money':
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

/** The sentence with every `{name}` replaced by its quantity. Throws RangeError if a name has no quantity. */
export function formatSentence(sentence: Sentence, style: QuantityStyle): string {
  return sentence.says.replace(/\{(\w+)\}/g, (_match, name: string) => {
    const quantity = Object.hasOwn(sentence.values, name) ? sentence.values[name] : undefined;
    if (quantity === undefined) throw new RangeError(`No quantity named ${name}`);
    return formatQuantity(quantity, style);
  });
}

/** Rounds to the reader's step in the direction of the calculator, so that the result stays on the safe side. */
function formatLengthQuantity(quantity: LengthQuantity, display: LengthDisplay): string {
  const { rounded, use } = quantity;
  if (use === 'yardage') return formatYardage(rounded, display);
  return use === 'fine'
    ? formatFineLength(rounded, display, directionOf(quantity))
    : formatLength(rounded, display, directionOf(quantity));
}

function directionOf({ rounding }: LengthQuantity): RoundingDirection {
  return rounding === 'none' ? 'nearest' : rounding;
}

/** Whether nothing was rounded, or the value that is shown has the same decimals as the exact one. */
function isExact(quantity: LengthQuantity, display: LengthDisplay): boolean {
  const { exact, rounded, use } = quantity;
  if (Math.abs(exact - rounded) < 1e-3) return true;
  if (use === 'yardage') return false;
  const shown = shownLength(rounded, display, { rounding: directionOf(quantity), isFine: use === 'fine' });
  return formatExactLength(exact, display) === formatExactLength(shown, display);
}

/** Whether the three decimals that would be written are all zero. */
function isWhole({ exact, rounded }: { readonly exact: number; readonly rounded: number }): boolean {
  return Math.abs(exact - rounded) < 5e-4;
}

/** `9½ × 12 in`: the unit is written once if both sides share it. */
function joinSides(width: string, length: string): string {
  const unit = length.slice(length.lastIndexOf(' '));
  return `${width.endsWith(unit) ? width.slice(0, -unit.length) : width} × ${length}`;
}

function minusSign(text: string): string {
  return text.replace('-', '−');
}

import { assertNever } from '#core/assert-never';
import { decimalText } from '#core/units/decimal-text';
import { formatArea } from '#core/units/format-area';
import {
  formatExactLength,
  formatFineLength,
  formatLength,
  formatYardage,
  shownLength,
  yardageStep,
} from '#core/units/format-length';
import { formatExactWeight, formatWeight } from '#core/units/format-weight';
import { formatMoney } from '#core/units/format-money';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { type CurrencyCode, moneyFromMinor } from '#core/units/money';
import type { Length } from '#core/units/length';
import { type RoundingDirection, roundUpTo } from '#core/units/rounding';
import { displayStep, INCH_STEPS, type LengthDisplay } from '#core/units/unit-system';
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
    case 'weight':
      return formatWeight(quantity.exact, style.display.system, quantity.rounding);
    case 'degrees':
      return `${minusSign(decimalText(quantity.exact, Math.abs(quantity.exact) < 2 ? 2 : 1))}°`;
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
    case 'weight':
      return exactWeight(quantity, style.display);
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

/**
 * The value where no exact one stands beside it: in a sentence, a table or a term. A length that the reader's step would change by
 * more than a quarter of that step is written to 1/64 in or 0.1 mm instead, in the calculator's direction.
 */
export function formatInline(quantity: Quantity, style: QuantityStyle): string {
  if (quantity.kind === 'length')
    return formatLengthQuantity(closeEnough(quantity, style.display), style.display);
  if (quantity.kind === 'size')
    return joinSides(formatInline(quantity.width, style), formatInline(quantity.length, style));
  return formatQuantity(quantity, style);
}

/** The sentence with every `{name}` replaced by its quantity. Throws RangeError if a name has no quantity. */
export function formatSentence(sentence: Sentence, style: QuantityStyle): string {
  return sentence.says.replace(/\{(\w+)\}/g, (_match, name: string) => {
    const quantity = Object.hasOwn(sentence.values, name) ? sentence.values[name] : undefined;
    if (quantity === undefined) throw new RangeError(`No quantity named ${name}`);
    return formatInline(quantity, style);
  });
}

/** Rounds to the reader's step in the direction of the calculator, so that the result stays on the safe side. */
function formatLengthQuantity(quantity: LengthQuantity, display: LengthDisplay): string {
  const { rounded } = quantity;
  if (isSoldLength(quantity, display)) return formatYardage(rounded, display);
  const { length, isFine, rounding } = writingOf(quantity, display);
  return isFine ? formatFineLength(rounded, length, rounding) : formatLength(rounded, length, rounding);
}

/** A length to buy is written in yards or meters, unless the maker's own step is finer than the one that fabric is sold in. */
function isSoldLength({ use, step }: LengthQuantity, display: LengthDisplay): boolean {
  return use === 'yardage' && (step === undefined || step >= yardageStep(display));
}

interface LengthWriting {
  readonly length: LengthDisplay;
  readonly isFine: boolean;
  readonly rounding: RoundingDirection;
}

/**
 * The step that a size is written in: the reader's, or a finer one that holds a length which was entered or is a whole number of
 * the maker's own steps. Such a length is set on a ruler as it is.
 */
function writingOf(quantity: LengthQuantity, display: LengthDisplay): LengthWriting {
  const { rounded, rounding, use, step } = quantity;
  const direction = rounding === 'none' ? 'nearest' : rounding;
  const reader = { length: display, isFine: use === 'fine', rounding: direction };
  const isWhole = rounding === 'none' || step !== undefined;
  if (!isWhole || shownBy(reader, rounded) === rounded) return reader;
  const finer = INCH_STEPS.filter((inchStep) => inchStep > display.inchStep).map(
    (inchStep): LengthWriting => ({ ...reader, length: { ...display, inchStep } }),
  );
  const tries = display.system === 'inch' ? finer : [{ ...reader, isFine: true }];
  return tries.find((one) => shownBy(one, rounded) === rounded) ?? reader;
}

function shownBy({ length, isFine, rounding }: LengthWriting, units: Length): number {
  return shownLength(units, length, { rounding, isFine });
}

/** The same length, to be written fine if the reader's step would change it by more than a quarter of that step. */
function closeEnough(quantity: LengthQuantity, display: LengthDisplay): LengthQuantity {
  if (quantity.use !== 'size') return quantity;
  const shown = shownBy(writingOf(quantity, display), quantity.rounded);
  return Math.abs(shown - quantity.rounded) > displayStep(display) / 4
    ? { ...quantity, use: 'fine' }
    : quantity;
}

/** Whether the value that is shown has the same decimals as the exact one. */
function isExact(quantity: LengthQuantity, display: LengthDisplay): boolean {
  const { exact, rounded } = quantity;
  const shown = isSoldLength(quantity, display)
    ? roundUpTo(rounded, yardageStep(display))
    : shownBy(writingOf(quantity, display), rounded);
  return formatExactLength(exact, display) === formatExactLength(shown, display);
}

/** Null where the weight that is written is the exact one to its last decimal. */
function exactWeight({ exact }: Extract<Quantity, { kind: 'weight' }>, { system }: LengthDisplay) {
  const steps = ['up', 'down', 'nearest'] as const;
  const isWhole = new Set(steps.map((step) => formatWeight(exact, system, step))).size === 1;
  return isWhole ? null : formatExactWeight(exact, system);
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

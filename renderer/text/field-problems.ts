import { assertNever } from '#core/assert-never';
import { formatLength } from '#core/units/format-length';
import { type Length, lengthFromUnits } from '#core/units/length';
import type { LengthProblem } from '#core/units/length-problem';
import type { MinutesProblem } from '#core/units/parse-minutes';
import type { MoneyProblem } from '#core/units/parse-money';
import type { WeightProblem } from '#core/units/parse-weight';
import type { LengthDisplay } from '#core/units/unit-system';

/** What to say at a length field: what was typed, and what to type instead. */
export function lengthProblemWords({ code, read, expected }: LengthProblem): string {
  const such = orList(expected);
  switch (code) {
    case 'empty':
      return `Write a length here, such as ${such}.`;
    case 'too-long':
      return `That’s too much text for a length. Write it like ${such}.`;
    case 'not-a-length':
      return `“${read}” could not be read as a length. Write it like ${such}.`;
    case 'ambiguous':
      return `“${read}” can mean two things. Write ${such}.`;
    case 'unknown-unit':
      return `The unit in “${read}” is not known. Write it like ${such}.`;
    case 'zero-denominator':
      return `“${read}” divides by zero. Write it like ${such}.`;
    case 'improper-fraction':
      return `The fraction in “${read}” is more than one. Write it like ${such}.`;
    case 'negative':
      return `A length can’t be less than zero. Write ${such}.`;
    case 'too-fine':
      return `“${read}” is too fine to measure. The finest are ${such}.`;
    case 'out-of-range':
      return `“${read}” is longer than any fabric. The longest are ${such}.`;
    case 'width-missing':
      return `“${read}” gives the length but not the width. Write both, such as ${such}.`;
    default:
      return assertNever(code);
  }
}

/** What to say of a length that is outside the limits of its field; null if it is within. Limits are in 1/320 mm. */
export function lengthRangeWords(
  length: Length,
  minimum: number | undefined,
  maximum: number | undefined,
  display: LengthDisplay,
): string | null {
  const fine = { ...display, inchStep: 64 } as const;
  const limit = (units: number) => formatLength(lengthFromUnits(units), fine);
  if (minimum !== undefined && length < minimum) return `This should be ${limit(minimum)} or more.`;
  if (maximum !== undefined && length > maximum) return `This should be ${limit(maximum)} or less.`;
  return null;
}

export function minutesProblemWords({ code, read, expected }: MinutesProblem): string {
  const such = orList(expected);
  switch (code) {
    case 'empty':
      return `Write how long, such as ${such}.`;
    case 'not-a-duration':
      return `“${read}” could not be read as a time. Write it like ${such}.`;
    case 'ambiguous':
      return `“${read}” can mean two things. For hours write ${such}.`;
    case 'out-of-range':
      return `“${read}” is longer than a stage can take.`;
    default:
      return assertNever(code);
  }
}

export function moneyProblemWords({ code, read, expected }: MoneyProblem): string {
  const such = orList(expected);
  switch (code) {
    case 'empty':
      return `Write an amount here, such as ${such}.`;
    case 'not-an-amount':
      return `“${read}” could not be read as an amount. Write it like ${such}.`;
    case 'ambiguous':
      return `“${read}” can mean two things. Write ${such}.`;
    case 'too-fine':
      return `“${read}” has more decimals than the currency. Write it like ${such}.`;
    case 'out-of-range':
      return `“${read}” is more than Ringbound can count.`;
    case 'other-currency':
      return `“${read}” is in another currency. Write it like ${such}.`;
    default:
      return assertNever(code);
  }
}

export function weightProblemWords({ code, read, expected }: WeightProblem): string {
  const such = orList(expected);
  switch (code) {
    case 'empty':
      return `Write a weight here, such as ${such}.`;
    case 'not-a-weight':
      return `“${read}” could not be read as a weight. Write it like ${such}.`;
    case 'ambiguous':
      return `“${read}” can mean two things. Write ${such}.`;
    default:
      return assertNever(code);
  }
}

/** `a`, `a or b`, `a, b or c`. */
export function orList(texts: readonly string[]): string {
  return texts.length < 2 ? (texts[0] ?? '') : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1) ?? ''}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function andList(texts: readonly string[]): string {
  return texts.length < 2 ? (texts[0] ?? '') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1) ?? ''}`;
}

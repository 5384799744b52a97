import type { CellProblem, StashColumn } from '#core/domain/stash-table';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import type { LengthUnit } from '#core/units/length-unit';
import type { CurrencyCode } from '#core/units/money';
import { parseLength } from '#core/units/parse-length';
import { parseMoney } from '#core/units/parse-money';
import type { PartialDate } from '#core/units/partial-date';
import type { DateOrder } from './column-habits';
import { readWrittenDate } from './read-written-date';

type Read<Value> = (text: string) => Result<Value, CellProblem>;

/** Reads the cell of a column; gives the fallback if the cell is empty or wrong. */
export type CellReader = <Value>(column: StashColumn, fallback: Value, read: Read<Value>) => Value;

/** The most characters of a cell that a problem quotes. */
const MAXIMUM_QUOTE = 40;

export function readText(most: number): Read<string> {
  return (text) => {
    const trimmed = text.trim();
    return trimmed.length <= most ? success(trimmed) : failure<CellProblem>({ kind: 'too-long', most });
  };
}

export function readLength(bareUnit: LengthUnit, within: (length: Length) => boolean): Read<Length> {
  return (text) => {
    const length = parseLength(text, bareUnit);
    if (!length.ok) {
      const isNegative = length.error.code === 'negative';
      return failure<CellProblem>(
        isNegative ? { kind: 'negative', read: quoted(text) } : { kind: 'length', problem: length.error },
      );
    }
    return within(length.value) ? length : failure<CellProblem>({ kind: 'out-of-range', read: quoted(text) });
  };
}

/** What a thing cost that was a present. */
const FREE = ['free', 'gift', 'a gift', 'present', 'swap'];

/** `thousands` is the mark that a whole column sets off thousands with. */
export function readCost(
  currency: CurrencyCode,
  { most, thousands }: { readonly most: number; readonly thousands: ',' | '.' },
): Read<number> {
  const grouped = new RegExp(`(\\d)[${thousands}](?=\\d{3}(?!\\d))`, 'g');
  return (text) => {
    if (FREE.includes(text.trim().toLowerCase())) return success(0);
    const money = parseMoney(text.replace(grouped, '$1'), currency);
    if (!money.ok) return failure<CellProblem>({ kind: 'money', problem: money.error });
    const { minor } = money.value;
    if (minor < 0) return failure<CellProblem>({ kind: 'negative', read: quoted(text) });
    return minor <= most
      ? success(minor)
      : failure<CellProblem>({ kind: 'out-of-range', read: quoted(text) });
  };
}

/** Reads days, months and years as people write them; the column says which number of 3/4/27 is the month. */
export function readDay(order: DateOrder): Read<PartialDate> {
  return (text) => {
    const date = readWrittenDate(text, order);
    return date.ok ? date : failure<CellProblem>({ kind: 'date', read: quoted(text) });
  };
}

export const readYesNo: Read<boolean> = (text) => {
  const word = text.trim().toLowerCase();
  if (['yes', 'y', 'true', '1', 'x', 'washed'].includes(word)) return success(true);
  if (['no', 'n', 'false', '0', '-', 'not yet'].includes(word)) return success(false);
  return failure<CellProblem>({ kind: 'unknown', read: quoted(text), expected: ['yes', 'no'] });
};

/** Reads a choice by its name, with spaces or dashes, or by another word for it. */
export function readChoice<Choice extends string>(
  choices: readonly Choice[],
  words: Readonly<Record<string, Choice>>,
): Read<Choice> {
  return (text) => {
    const word = text.trim().toLowerCase();
    const dashed = word.replace(/[\s,]+/g, '-');
    const found =
      choices.find((one) => one === dashed) ?? (Object.hasOwn(words, word) ? words[word] : undefined);
    return found === undefined
      ? failure<CellProblem>({ kind: 'unknown', read: quoted(text), expected: choices })
      : success(found);
  };
}

function quoted(text: string): string {
  return text.slice(0, MAXIMUM_QUOTE);
}

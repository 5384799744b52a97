import { failure, type Result, success } from '#core/result';
import { minorDigits } from './format-money';
import { type CurrencyCode, type Money, moneyFromMinor } from './money';
import { clipRead, MAX_TYPED_CHARACTERS, normaliseTyped } from './typed-text';

export interface MoneyProblem {
  /** too-fine: more decimals than the currency has; other-currency: names a currency that is not the field's. */
  readonly code: 'empty' | 'not-an-amount' | 'ambiguous' | 'too-fine' | 'out-of-range' | 'other-currency';
  readonly read: string;
  /** Texts that would have been taken. */
  readonly expected: readonly string[];
}

/** Sign, what stands before the number, the number, and what stands after it. */
const AMOUNT = /^(-?)([^\d.,-]*)(-?)([\d.,' ]*\d)([^\d]*)$/;
const PLAIN = /^(\d*)(?:([.,])(\d+))?$/;
const GROUPED = /^(\d{1,3}(?:([ ',.])\d{3})(?:\2\d{3})*)(?:([.,])(\d+))?$/;

/**
 * Reads an amount of the field's currency, with or without its code or sign before or after, thousands set off by comma, point,
 * space or apostrophe, exactly. Three digits after a single mark (`1,250`) are ambiguous, but for a currency without decimals,
 * where they are thousands, and after the point of a currency with three. Negative amounts are read; a field that wants none says so itself.
 */
export function parseMoney(text: string, currency: CurrencyCode): Result<Money, MoneyProblem> {
  const places = minorDigits(currency);
  const examples =
    places === 0 ? ['12', `12 ${currency}`] : [`12.${'50'.padEnd(places, '0')}`, `12 ${currency}`];
  const problem = (code: MoneyProblem['code'], expected: readonly string[] = examples) =>
    failure({ code, read: clipRead(text), expected });
  if (text.length > MAX_TYPED_CHARACTERS) return problem('not-an-amount');
  const typed = normaliseTyped(text);
  if (typed === '') return problem('empty');
  const [read, sign = '', before = '', innerSign = '', number = '', after = ''] = AMOUNT.exec(typed) ?? [];
  if (read === undefined || (sign !== '' && innerSign !== '')) return problem('not-an-amount');
  const [front, back] = [before.trim(), after.trim()];
  if (front !== '' && back !== '') return problem('not-an-amount');
  const name = front + back;
  if (!['', currency.toLowerCase(), currencySign(currency)].includes(name)) {
    return problem(/^(?:[a-z]{3}|\p{Sc})$/u.test(name) ? 'other-currency' : 'not-an-amount');
  }

  const decimal = readDecimal(number, places);
  if (decimal === undefined) return problem('not-an-amount');
  if (decimal.isAmbiguous) {
    return problem('ambiguous', [
      `${decimal.whole}${decimal.decimals}`,
      `${decimal.whole}.${decimal.decimals.slice(0, places)}`,
    ]);
  }
  if (/[1-9]/.test(decimal.decimals.slice(places))) return problem('too-fine');
  const minor = Number(`${decimal.whole}${decimal.decimals.slice(0, places).padEnd(places, '0')}`);
  if (!Number.isSafeInteger(minor)) return problem('out-of-range');
  return success(moneyFromMinor(sign + innerSign === '-' ? -minor : minor, currency));
}

interface Decimal {
  readonly whole: string;
  readonly decimals: string;
  readonly isAmbiguous: boolean;
}

function readDecimal(number: string, places: number): Decimal | undefined {
  const plain = PLAIN.exec(number);
  if (plain !== null) {
    const [, whole = '', mark = '', decimals = ''] = plain;
    const couldBeThousands = mark !== '' && decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole);
    if (couldBeThousands && places === 0)
      return { whole: whole + decimals, decimals: '', isAmbiguous: false };
    return { whole, decimals, isAmbiguous: couldBeThousands && !(mark === '.' && places === 3) };
  }
  const [read, groups = '', separator, mark, decimals = ''] = GROUPED.exec(number) ?? [];
  if (read === undefined || separator === mark || groups.startsWith('0')) return undefined;
  return { whole: groups.replace(/\D/g, ''), decimals, isAmbiguous: false };
}

/** The short sign of a currency, lower case as typed text is: `$` for several, `€`, `kr`. */
function currencySign(currency: CurrencyCode): string {
  const format = new Intl.NumberFormat('en', {
    style: 'currency',
    currency,
    currencyDisplay: 'narrowSymbol',
  });
  const signs = format.formatToParts(0).filter((part) => part.type === 'currency');
  return signs.map((part) => part.value.toLowerCase()).join('');
}

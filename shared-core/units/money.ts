import { roundNearest } from './rounding';

declare const currencyBrand: unique symbol;

/** An ISO 4217 alphabetic code. */
export type CurrencyCode = string & { readonly [currencyBrand]: 'CurrencyCode' };

/** A whole number of the currency's minor unit (cents), never a float of the major one. */
export interface Money {
  readonly minor: number;
  readonly currency: CurrencyCode;
}

/** Three capital letters; throws RangeError otherwise. Whether the code is assigned is the display's business. */
export function currencyFromCode(code: string): CurrencyCode {
  if (!/^[A-Z]{3}$/.test(code)) throw new RangeError(`Not a currency code: ${code}`);
  return code as CurrencyCode;
}

/** Throws RangeError unless `minor` is a safe whole number. */
export function moneyFromMinor(minor: number, currency: CurrencyCode): Money {
  if (!Number.isSafeInteger(minor)) throw new RangeError(`Not a whole amount: ${String(minor)}`);
  return { minor: minor === 0 ? 0 : minor, currency };
}

/** Rounds a computed amount once, to the nearest minor unit, half away from zero. */
export function moneyFromExact(minor: number, currency: CurrencyCode): Money {
  return moneyFromMinor(roundNearest(minor, 1), currency);
}

/** Throws RangeError when the currencies differ: amounts of two currencies have no sum. */
export function moneyAdd(first: Money, ...more: readonly Money[]): Money {
  return more.reduce<Money>((sum, money) => {
    if (money.currency !== sum.currency)
      throw new RangeError(`Cannot add ${money.currency} to ${sum.currency}`);
    return moneyFromMinor(sum.minor + money.minor, sum.currency);
  }, first);
}

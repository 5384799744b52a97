declare const currencyBrand: unique symbol;

/** An ISO 4217 alphabetic code. */
export type CurrencyCode = string & { readonly [currencyBrand]: 'CurrencyCode' };

/** A whole number of the currency's minor unit (cents), never a float of the major one. */
export interface Money {
  readonly minor: number;
  readonly currency: CurrencyCode;
}

/** Takes three capital letters and throws RangeError otherwise. It does not check that the code is assigned to a currency. */
export function currencyFromCode(code: string): CurrencyCode {
  if (!/^[A-Z]{3}$/.test(code)) throw new RangeError(`Not a currency code: ${code}`);
  return code as CurrencyCode;
}

/** Throws RangeError unless `minor` is a safe whole number. */
export function moneyFromMinor(minor: number, currency: CurrencyCode): Money {
  if (!Number.isSafeInteger(minor)) throw new RangeError(`Not a whole amount: ${String(minor)}`);
  return { minor: minor === 0 ? 0 : minor, currency };
}

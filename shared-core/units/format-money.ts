import type { CurrencyCode, Money } from './money';

/** Digits of the currency's minor unit by ISO 4217: 2 for most, 0 for JPY, 3 for KWD; 2 for a code nobody has assigned. */
export function minorDigits(currency: CurrencyCode): number {
  const parts = new Intl.NumberFormat('en', { style: 'currency', currency }).formatToParts(0);
  return parts.find((part) => part.type === 'fraction')?.value.length ?? 0;
}

/** The amount in the locale's way with its currency, exact to the last minor unit however large. */
export function formatMoney(money: Money, locale: string): string {
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency: money.currency });
  return format.format(decimalAmount(money) as `${number}`);
}

/** Plain `-1234.50` for an input field or a table of data; `parseMoney` reads it back. */
export function formatMoneyForEditing(money: Money): string {
  return decimalAmount(money);
}

function decimalAmount({ minor, currency }: Money): string {
  const places = minorDigits(currency);
  const digits = String(Math.abs(minor)).padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  const sign = minor < 0 ? '-' : '';
  return places === 0 ? `${sign}${whole}` : `${sign}${whole}.${digits.slice(-places)}`;
}

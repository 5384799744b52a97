import type { KnownCost } from '#core/units/known-cost';
import { formatArea } from '#core/units/format-area';
import { formatMoney } from '#core/units/format-money';
import { type CurrencyCode, moneyFromMinor } from '#core/units/money';
import type { LengthDisplay } from '#core/units/unit-system';

interface MoneyDisplay {
  readonly currency: CurrencyCode;
  readonly locale: string;
}

/** `$12.00`; `at least $12.00` if the cost of some of it is not known, and `not known` if that of all of it is not. */
export function costWords({ minor, unpricedArea }: KnownCost, { currency, locale }: MoneyDisplay): string {
  const money = formatMoney(moneyFromMinor(minor, currency), locale);
  if (unpricedArea === 0) return money;
  return minor === 0 ? 'not known' : `at least ${money}`;
}

/** The same where no heading says that it is a cost: `$12.00`, `cost not known`; empty for nothing. */
export function loneCostWords(cost: KnownCost, display: MoneyDisplay): string {
  if (cost.minor === 0) return cost.unpricedArea === 0 ? '' : 'cost not known';
  return costWords(cost, display);
}

/** `No price on record for 120 sq in of it.`; empty if all of it has a price. */
export function unpricedWords({ unpricedArea }: KnownCost, length: LengthDisplay): string {
  return unpricedArea === 0 ? '' : `No price on record for ${formatArea(unpricedArea, length)} of it.`;
}

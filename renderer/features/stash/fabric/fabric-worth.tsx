import { useState } from 'react';
import type { FabricPage } from '#core/contract/stash';
import { costAgain } from '#core/stash/replacement';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import layout from '#renderer/ui/page/layout.module.css';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { FactList } from '#renderer/ui/page/fact-list';
import { PriceDialog } from './price-dialog';
import styles from './fabric.module.css';

/** What the fabric is worth, counted in three ways, and its price in a shop. */
export function FabricWorth({ opened }: { readonly opened: FabricPage }) {
  const { fabric, valueMinor, price, worth, ledger } = opened;
  const { length, currency, locale } = useDisplay();
  const [isPricing, setIsPricing] = useState(false);
  if (ledger.length === 0) return null;
  const money = (minor: number) => formatMoney(moneyFromMinor(minor, currency), locale);
  // Nothing paid, or not known what: the ledger has no price for it.
  const paid = (minor: number) => (minor === 0 ? 'no price on record' : money(minor));
  const unit = shopUnit(length);
  const shopPrice =
    price === null
      ? 'not known'
      : `${money(costAgain(unit.length * fabric.width, price))} a ${unit.word}${price.isOwn ? '' : ', as last paid'}`;
  const lines: readonly (readonly [string, string])[] = [
    ['As paid', paid(valueMinor)],
    ['Oldest fabric first', paid(worth.fifoMinor)],
    ['To buy it again', worth.replacementMinor === null ? 'not known' : money(worth.replacementMinor)],
    ['Price now', shopPrice],
  ];
  return (
    <div className={styles['worth']}>
      <FactList facts={lines} label="What it is worth" />
      <div className={layout['row']}>
        <Button look="quiet" isSmall onClick={() => setIsPricing(true)}>
          Set a price
        </Button>
      </div>
      {isPricing && <PriceDialog opened={opened} onClose={() => setIsPricing(false)} />}
    </div>
  );
}

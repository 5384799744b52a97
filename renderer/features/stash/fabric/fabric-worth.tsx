import { useState } from 'react';
import type { FabricPage } from '#core/contract/stash';
import { costAgain } from '#core/stash/replacement';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { costWords, unpricedWords } from '#renderer/text/cost-words';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import layout from '#renderer/ui/page/layout.module.css';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { FactList } from '#renderer/ui/page/fact-list';
import { PriceDialog } from './price-dialog';
import styles from './fabric.module.css';

/** What the fabric is worth, counted in three ways, and its price in a shop. */
export function FabricWorth({ opened }: { readonly opened: FabricPage }) {
  const { fabric, value, price, worth, ledger } = opened;
  const display = useDisplay();
  const { length, currency, locale } = display;
  const [isPricing, setIsPricing] = useState(false);
  if (ledger.length === 0) return null;
  const money = (minor: number) => formatMoney(moneyFromMinor(minor, currency), locale);
  const unit = shopUnit(length);
  const unpriced = unpricedWords(value, length);
  const shopPrice =
    price === null
      ? 'not known'
      : `${money(costAgain(unit.length * fabric.width, price))} a ${unit.word}${price.isOwn ? '' : ', as last paid'}`;
  const lines: readonly (readonly [string, string])[] = [
    ['As paid', costWords(value, display)],
    ['Oldest fabric first', costWords(worth.firstIn, display)],
    ['To buy it again', worth.replacementMinor === null ? 'not known' : money(worth.replacementMinor)],
    ['Price now', shopPrice],
  ];
  return (
    <div className={styles['worth']}>
      <FactList facts={lines} label="What it is worth" />
      {unpriced !== '' && <p className={layout['quiet']}>{unpriced}</p>}
      <div className={layout['row']}>
        <Button look="quiet" isSmall onClick={() => setIsPricing(true)}>
          Set a price
        </Button>
      </div>
      {isPricing && <PriceDialog opened={opened} onClose={() => setIsPricing(false)} />}
    </div>
  );
}

import { useState } from 'react';
import type { FabricPage } from '#core/contract/stash';
import { costAgain } from '#core/stash/replacement';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import shared from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { FactList } from '#renderer/ui/page/fact-list';
import { PriceDialog } from './price-dialog';
import styles from './fabric.module.css';

/** What the fabric is worth in the three ways there are, and what a shop asks for it. */
export function FabricWorth({ opened }: { readonly opened: FabricPage }) {
  const { fabric, valueMinor, price, worth, ledger } = opened;
  const { length, currency, locale } = useDisplay();
  const [isAsking, setIsAsking] = useState(false);
  if (ledger.length === 0) return null;
  const money = (minor: number) => formatMoney(moneyFromMinor(minor, currency), locale);
  const unit = shopUnit(length);
  const asked =
    price === null
      ? 'not known'
      : `${money(costAgain(unit.length * fabric.width, price))} a ${unit.word}${price.isOwn ? '' : ', as last paid'}`;
  const lines: readonly (readonly [string, string])[] = [
    ['As paid', money(valueMinor)],
    ['First in, first out', money(worth.firstInMinor)],
    ['To buy it again', worth.againMinor === null ? 'not known' : money(worth.againMinor)],
    ['Price now', asked],
  ];
  return (
    <div className={styles['worth']}>
      <FactList facts={lines} label="What it is worth" />
      <div className={shared['row']}>
        <Button look="quiet" isSmall onClick={() => setIsAsking(true)}>
          Write down a price
        </Button>
      </div>
      {isAsking && <PriceDialog opened={opened} onClose={() => setIsAsking(false)} />}
    </div>
  );
}

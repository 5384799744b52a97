import { useState } from 'react';
import { Link } from 'react-router';
import type { JobPlan, Purchase } from '#core/cutting/tree/cutting-job';
import { type CuttingSetup, listNameOf } from '#core/domain/cutting-setup';
import { formatLength, formatYardage } from '#core/units/format-length';
import { costAgain } from '#core/stash/replacement';
import { asLength } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { Typeset } from '#renderer/ui/answers/typeset';
import type { Shelf } from '../planning/job-of-setup';
import { purchaseGapWords } from '../planning/plan-quality-words';
import styles from '../cutting.module.css';

interface ToBuyProps {
  readonly plan: JobPlan;
  readonly setup: CuttingSetup;
  readonly shelf: Shelf;
  /** Books what was bought for a kept plan; null where the plan is not kept yet. */
  readonly onBought: ((fabric: string, costMinor: number) => void) | null;
  readonly isBusy?: boolean;
}

/** The shopping list of a plan: what the stash does not hold, in the lengths a shop cuts. */
export function ToBuy({ plan, ...rest }: ToBuyProps) {
  return (
    <section className={styles['part']} aria-label="To buy">
      <h2 className={styles['heading']}>To buy</h2>
      {plan.purchases.length === 0 ? (
        <p>Nothing: the stash holds it all.</p>
      ) : (
        <>
          <ul className={styles['plain']}>
            {plan.purchases.map((purchase) => (
              <Line key={purchase.fabric} purchase={purchase} {...rest} />
            ))}
          </ul>
          <p className={styles['quiet']}>
            {rest.onBought === null
              ? 'Once the plan is kept, what you bought is written down here with one press.'
              : 'What is written down lies in the stash, set aside for this piece, and can be cut at once.'}
          </p>
        </>
      )}
    </section>
  );
}

function Line({
  purchase,
  setup,
  shelf,
  onBought,
  isBusy = false,
}: Omit<ToBuyProps, 'plan'> & { readonly purchase: Purchase }) {
  const { length } = useDisplay();
  const words = `${formatYardage(asLength(purchase.length), length)} of ${nameOfFabric(purchase.fabric, setup, shelf)}`;
  const width = `, ${formatLength(asLength(purchase.width), length)} wide`;
  const onShelf = [...shelf.fabrics.values()].find(({ fabric }) => fabric.id === purchase.fabric);
  const inStash = onShelf !== undefined;
  const price = onShelf?.price ?? null;
  const asking = price === null ? null : costAgain(purchase.width * purchase.length, price);
  const [paid, setPaid] = useState<number | null>(asking);
  const gap = purchaseGapWords(purchase, setup.table.straighten, length);
  return (
    <li>
      <strong>
        <Typeset text={words} />
      </strong>
      <Typeset text={width} />{' '}
      <Link to={inStash ? `/stash/${purchase.fabric}` : '/stash'}>{inStash ? 'Its page' : 'The stash'}</Link>
      {gap !== '' && (
        <p className={styles['quiet']}>
          <Typeset text={gap} />
        </p>
      )}
      {onBought !== null && (
        <div className={styles['bought']}>
          <MoneyField label="Paid" isOptional value={paid} onCommit={setPaid} />
          <Button
            isSmall
            disabled={isBusy}
            aria-label={`Write down as bought: ${words}`}
            onClick={() => onBought(purchase.fabric, paid ?? 0)}
          >
            Write it down as bought
          </Button>
        </div>
      )}
    </li>
  );
}

/** What the maker calls the planner's fabric: the fabric of the stash, or the name in the list. */
export function nameOfFabric(key: string, setup: CuttingSetup, shelf: Shelf): string {
  const onShelf = [...shelf.fabrics.values()].find(({ fabric }) => fabric.id === key);
  if (onShelf !== undefined) return onShelf.fabric.name;
  return listNameOf(setup, key) ?? 'fabric';
}

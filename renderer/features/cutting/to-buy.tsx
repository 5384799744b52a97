import { Link } from 'react-router';
import type { JobPlan, Purchase } from '#core/cutting/cutting-job';
import { type CuttingSetup, listNameOf } from '#core/domain/cutting-setup';
import { formatLength, formatYardage } from '#core/units/format-length';
import { asLength } from '#renderer/text/cut-words';
import { useDisplay } from '#renderer/ui/display';
import { Typeset } from '#renderer/ui/typeset';
import type { Shelf } from './job-of-setup';
import { purchaseGapWords } from './plan-words';
import styles from './cutting.module.css';

interface ToBuyProps {
  readonly plan: JobPlan;
  readonly setup: CuttingSetup;
  readonly shelf: Shelf;
}

/** The shopping list of a plan: what the stash does not hold, in the lengths a shop cuts. */
export function ToBuy({ plan, setup, shelf }: ToBuyProps) {
  return (
    <section className={styles['part']} aria-label="To buy">
      <h2 className={styles['heading']}>To buy</h2>
      {plan.purchases.length === 0 ? (
        <p>Nothing: the stash holds it all.</p>
      ) : (
        <ul className={styles['plain']}>
          {plan.purchases.map((purchase) => (
            <Line key={purchase.fabric} purchase={purchase} setup={setup} shelf={shelf} />
          ))}
        </ul>
      )}
    </section>
  );
}

function Line({ purchase, setup, shelf }: Omit<ToBuyProps, 'plan'> & { readonly purchase: Purchase }) {
  const { length } = useDisplay();
  const words = `${formatYardage(asLength(purchase.length), length)} of ${nameOfCloth(purchase.fabric, setup, shelf)}`;
  const width = `, ${formatLength(asLength(purchase.width), length)} wide`;
  const inStash = [...shelf.cloth.values()].some(({ fabric }) => fabric.id === purchase.fabric);
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
    </li>
  );
}

/** What the maker calls the planner's fabric: the fabric of the stash, or the name in the list. */
export function nameOfCloth(key: string, setup: CuttingSetup, shelf: Shelf): string {
  const onShelf = [...shelf.cloth.values()].find(({ fabric }) => fabric.id === key);
  if (onShelf !== undefined) return onShelf.fabric.name;
  return listNameOf(setup, key) ?? 'cloth';
}

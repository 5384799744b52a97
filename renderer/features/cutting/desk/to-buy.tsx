import { Link } from 'react-router';
import type { JobPlan, Purchase } from '#core/cutting/tree/cutting-job';
import { type CuttingSetup, listNameOf } from '#core/domain/cutting-setup';
import { formatLength, formatYardage } from '#core/units/format-length';
import { costAgain } from '#core/stash/replacement';
import { asLength } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { DraftContext, useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { Typeset } from '#renderer/ui/answers/typeset';
import type { PlanStash } from '../planning/job-of-setup';
import { purchaseGapWords } from '../planning/cutting-plan-words';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './desk.module.css';

interface ToBuyProps {
  readonly plan: JobPlan;
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
  /** Records a purchase for a saved plan; null when the plan is not saved yet. */
  readonly onBought: ((fabric: string, costMinor: number | null) => void) | null;
  readonly isBusy?: boolean;
}

/** The shopping list of a plan: what the stash does not have, in lengths that a shop cuts. */
export function ToBuy({ plan, ...rest }: ToBuyProps) {
  return (
    <section className={layout['part']} aria-label="To buy">
      <h2 className={layout['heading']}>To buy</h2>
      {plan.purchases.length === 0 ? (
        <p>Nothing: your stash has it all.</p>
      ) : (
        <>
          <ul className={styles['toBuy']}>
            {plan.purchases.map((purchase) => (
              <Line key={purchase.fabric} purchase={purchase} {...rest} />
            ))}
          </ul>
          <p className={layout['quiet']}>
            {rest.onBought === null
              ? 'Once you save the plan, you can record what you bought here.'
              : 'Fabric you record goes into your stash, set aside for this project, and you can cut it right away.'}
          </p>
        </>
      )}
    </section>
  );
}

function Line({
  purchase,
  setup,
  stash,
  onBought,
  isBusy = false,
}: Omit<ToBuyProps, 'plan'> & { readonly purchase: Purchase }) {
  const { length } = useDisplay();
  const words = `${formatYardage(asLength(purchase.length), length)} of ${nameOfFabric(purchase.fabric, setup, stash)}`;
  const width = `, ${formatLength(asLength(purchase.width), length)} wide`;
  const inStash = [...stash.fabrics.values()].find(({ fabric }) => fabric.id === purchase.fabric);
  const price = inStash?.price ?? null;
  const usualCost = price === null ? null : costAgain(purchase.width * purchase.length, price);
  const draft = useFormDraft(`paid ${setup.projects.join(' ')} ${purchase.fabric}`);
  const [paid, setPaid] = useDraftValue(draft, 'paid', usualCost);
  const gap = purchaseGapWords(purchase, setup.table.straighten, length);
  return (
    <li>
      <strong>
        <Typeset text={words} />
      </strong>
      <Typeset text={width} />{' '}
      <Link to={inStash === undefined ? '/stash' : `/stash/${purchase.fabric}`}>
        {inStash === undefined ? 'See your stash' : 'See this fabric'}
      </Link>
      {gap !== '' && (
        <p className={layout['quiet']}>
          <Typeset text={gap} />
        </p>
      )}
      {onBought !== null && (
        <div className={styles['bought']}>
          <DraftContext value={draft}>
            <MoneyField label="Paid" isOptional value={paid} onCommit={setPaid} />
          </DraftContext>
          <Button
            isSmall
            disabled={isBusy}
            aria-label={`Record as bought: ${words}`}
            onClick={() => {
              draft.forget();
              onBought(purchase.fabric, paid);
            }}
          >
            Record as bought
          </Button>
        </div>
      )}
    </li>
  );
}

/** The maker’s name for one of the planner’s fabrics: that of the fabric of the stash, or the name in the list. */
export function nameOfFabric(key: string, setup: CuttingSetup, stash: PlanStash): string {
  const inStash = [...stash.fabrics.values()].find(({ fabric }) => fabric.id === key);
  if (inStash !== undefined) return inStash.fabric.name;
  return listNameOf(setup, key) ?? 'fabric';
}

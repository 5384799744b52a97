import { useId } from 'react';
import type { CuttingRule } from '#core/cutting/tree/cut-plan';
import type { JobPlan } from '#core/cutting/tree/cutting-job';
import { formatArea } from '#core/units/format-area';
import { asLength, counted } from '#renderer/text/cut-words';
import { useDisplay } from '#renderer/ui/base/display';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import { fabricTaken, mostRounds } from './cutting-plan-words';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './planning.module.css';

interface CuttingPlanChoiceProps {
  readonly plans: readonly [simplest: JobPlan, least: JobPlan];
  readonly chosen: JobPlan;
  readonly onChoose: (rule: CuttingRule) => void;
}

const WORDS: Readonly<Record<CuttingRule, { readonly name: string; readonly how: string }>> = {
  '2-stage': { name: 'Simplest cuts', how: 'Strips across the fabric, then across the strips.' },
  guillotine: { name: 'Least fabric', how: 'Any order of cuts, each from edge to edge.' },
};

/** Shows both plans, one with simple cuts and one with least fabric, to choose one. Arrow keys move between them. */
export function CuttingPlanChoice({ plans, chosen, onChoose }: CuttingPlanChoiceProps) {
  const name = useId();
  return (
    <fieldset>
      <legend className={layout['legend']}>Which plan to cut by</legend>
      <div className={styles['cards']}>
        {plans.map((plan) => (
          <label key={plan.rule} className={styles['card']}>
            <input
              type="radio"
              name={name}
              checked={plan.rule === chosen.rule}
              onChange={() => onChoose(plan.rule)}
            />
            <strong>{WORDS[plan.rule].name}</strong>
            <span className={layout['quiet']}>{WORDS[plan.rule].how}</span>
            <Figures plan={plan} />
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function Figures({ plan }: { readonly plan: JobPlan }) {
  const { length } = useDisplay();
  const { totals } = plan;
  return (
    <>
      <span className={styles['hero']}>
        <LengthText length={asLength(fabricTaken(plan))} rounding="up" />
        <span className={styles['heroUnit']}> of fabric</span>
      </span>
      <span>
        {counted(totals.cuts, 'cut')} in {counted(mostRounds(plan), 'round')}
      </span>
      <span className={layout['quiet']}>
        <Typeset
          text={`${formatArea(totals.usedArea, length)} used, from ${counted(totals.pieces, 'piece')} of fabric`}
        />
      </span>
      {totals.largestLeftover > 0 && (
        <span className={layout['quiet']}>
          <Typeset text={`largest leftover ${formatArea(totals.largestLeftover, length)}`} />
        </span>
      )}
    </>
  );
}

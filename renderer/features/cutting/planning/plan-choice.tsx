import { useId } from 'react';
import type { CuttingRule } from '#core/cutting/tree/cut-plan';
import type { JobPlan } from '#core/cutting/tree/cutting-job';
import { formatArea } from '#core/units/format-area';
import { asLength, counted } from '#renderer/text/cut-words';
import { useDisplay } from '#renderer/ui/base/display';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import { fabricTaken, mostStages } from './plan-quality-words';
import styles from '../cutting.module.css';

interface PlanChoiceProps {
  readonly plans: readonly [simplest: JobPlan, least: JobPlan];
  readonly chosen: JobPlan;
  readonly onChoose: (rule: CuttingRule) => void;
}

const WORDS: Readonly<Record<CuttingRule, { readonly name: string; readonly says: string }>> = {
  '2-stage': { name: 'Simplest cuts', says: 'Strips across the fabric, then across the strips.' },
  guillotine: { name: 'Least fabric', says: 'Any row of cuts from edge to edge.' },
};

/** Simple cuts or little fabric: both plans as they stand, one of them chosen. Arrow keys move between them. */
export function PlanChoice({ plans, chosen, onChoose }: PlanChoiceProps) {
  const name = useId();
  return (
    <fieldset>
      <legend className={styles['legend']}>Which plan to cut by</legend>
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
            <span className={styles['quiet']}>{WORDS[plan.rule].says}</span>
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
        {counted(totals.cuts, 'cut')} in {counted(mostStages(plan), 'stage')}
      </span>
      <span className={styles['quiet']}>
        <Typeset
          text={`${formatArea(totals.usedArea, length)} used, ${counted(totals.pieces, 'piece')} started`}
        />
      </span>
      {totals.largestLeftover > 0 && (
        <span className={styles['quiet']}>
          <Typeset text={`largest leftover ${formatArea(totals.largestLeftover, length)}`} />
        </span>
      )}
    </>
  );
}

import { useId } from 'react';
import type { StagePlan } from '#core/contract/projects';
import styles from './project-form.module.css';

interface PlanChoiceProps {
  readonly plans: readonly StagePlan[];
  readonly chosen: StagePlan['id'] | null;
  readonly onChoose: (id: StagePlan['id']) => void;
}

/** The way the piece will go through the workshop; its stages can be changed at any time afterwards. */
export function PlanChoice({ plans, chosen, onChoose }: PlanChoiceProps) {
  const name = useId();
  return (
    <fieldset>
      <legend className={styles['legend']}>Stages it will go through</legend>
      <div className={styles['plans']}>
        {plans.map((plan) => (
          <label key={plan.id} className={styles['plan']}>
            <input type="radio" name={name} checked={plan.id === chosen} onChange={() => onChoose(plan.id)} />
            <span className={styles['planName']}>{plan.name}</span>
            <span className={styles['planStages']}>{plan.stages.map((stage) => stage.name).join(' · ')}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

import { useId } from 'react';
import type { StagePlan } from '#core/contract/projects';
import styles from './project-form.module.css';

interface StagePlanChoiceProps {
  readonly plans: readonly StagePlan[];
  readonly chosen: StagePlan['id'] | null;
  readonly onChoose: (id: StagePlan['id']) => void;
}

/** Chooses the stage plan of a project. Its stages can be changed at any time later. */
export function StagePlanChoice({ plans, chosen, onChoose }: StagePlanChoiceProps) {
  const name = useId();
  return (
    <fieldset>
      <legend className={styles['legend']}>Stage plan</legend>
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

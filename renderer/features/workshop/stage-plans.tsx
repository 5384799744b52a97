import { useState } from 'react';
import type { StagePlan } from '#core/contract/projects';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { PlanDialog } from './plan-dialog';
import { type PlanDraft, planDraftOf, newPlanDraft } from './plan-draft';
import styles from './workshop.module.css';

/** The plans a project can be begun from: those that came with the notebook, which can be copied, and the maker's own. */
export function StagePlans() {
  const { value: plans, problem } = useRead('stage-plan:list', {});
  const [draft, setDraft] = useState<PlanDraft | null>(null);
  return (
    <section className={styles['part']} aria-labelledby="stage-plans">
      <div className={styles['head']}>
        <h2 id="stage-plans">Stage plans</h2>
        <Button isSmall onClick={() => setDraft(newPlanDraft())}>
          Write a plan
        </Button>
      </div>
      <p className={styles['quiet']}>
        A change of a plan reaches projects begun after it. One already begun follows it when it is told to,
        on its own page.
      </p>
      <ProblemNotice problem={problem} />
      <ul className={styles['lines']}>
        {(plans ?? []).map((plan) => (
          <PlanLine key={plan.id} plan={plan} onOpen={setDraft} />
        ))}
      </ul>
      {draft !== null && <PlanDialog start={draft} onClose={() => setDraft(null)} />}
    </section>
  );
}

function PlanLine({
  plan,
  onOpen,
}: {
  readonly plan: StagePlan;
  readonly onOpen: (draft: PlanDraft) => void;
}) {
  const deleting = useWrite('stage-plan:delete');
  return (
    <li className={styles['line']}>
      <span className={styles['words']}>
        <span className={styles['name']}>{plan.name}</span>
        <span className={styles['quiet']}>{plan.stages.map(({ name }) => name).join(', ')}</span>
      </span>
      <span className={styles['buttons']}>
        {plan.isOwn && (
          <Button
            isSmall
            aria-label={`Change ${plan.name}`}
            onClick={() => onOpen(planDraftOf(plan, plan.id))}
          >
            Change
          </Button>
        )}
        <Button isSmall aria-label={`Copy ${plan.name}`} onClick={() => onOpen(planDraftOf(plan, null))}>
          Copy
        </Button>
        {plan.isOwn && (
          <Button
            look="quiet"
            isSmall
            aria-label={`Delete ${plan.name}`}
            disabled={deleting.isWriting}
            onClick={() => void deleting.write({ stagePlanId: plan.id })}
          >
            Delete
          </Button>
        )}
      </span>
      <ProblemNotice problem={deleting.problem} />
    </li>
  );
}

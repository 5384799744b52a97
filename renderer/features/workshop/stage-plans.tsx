import { useState } from 'react';
import type { StagePlan } from '#core/contract/projects';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { PlanDialog } from './plan-dialog';
import { type PlanDraft, planDraftOf, newPlanDraft } from './plan-draft';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

/** The stage plans for new projects: the built-in ones, which can be copied, and the maker's own. */
export function StagePlans() {
  const { value: plans, problem } = useRead('stage-plan:list', {});
  const [draft, setDraft] = useState<PlanDraft | null>(null);
  return (
    <section className={layout['stack']} aria-labelledby="stage-plans">
      <div className={styles['head']}>
        <h2 id="stage-plans">Stage plans</h2>
        <Button isSmall onClick={() => setDraft(newPlanDraft())}>
          Add a stage plan
        </Button>
      </div>
      <p className={layout['quiet']}>
        Changes apply to new projects. To update one you’ve started, open it and choose “Switch plan”.
      </p>
      <ProblemNotice problem={problem} />
      <ul className={layout['lines']}>
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
        <span className={layout['quiet']}>{plan.stages.map(({ name }) => name).join(', ')}</span>
      </span>
      <span className={layout['row']}>
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

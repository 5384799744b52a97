import { useState } from 'react';
import type { ProjectSpread, StagePlan } from '#core/contract/projects';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { PlanChoice } from './plan-choice';
import styles from './spread.module.css';

interface FollowPlanDialogProps {
  readonly projectId: ProjectSpread['project']['id'];
  readonly onClose: () => void;
}

/** Puts a running piece on another plan, or on the same one as it is written now. */
export function FollowPlanDialog({ projectId, onClose }: FollowPlanDialogProps) {
  const { value: plans } = useRead('stage-plan:list', {});
  const [chosen, setChosen] = useState<StagePlan['id'] | null>(null);
  const following = useWrite('project:follow-plan');
  const follow = async () => {
    if (chosen === null) return;
    const followed = await following.write({ projectId, stagePlanId: chosen });
    if (followed.ok) onClose();
  };
  return (
    <Dialog
      title="Follow another plan"
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Leave it</Button>
          <Button look="main" disabled={chosen === null || following.isWriting} onClick={() => void follow()}>
            Follow this plan
          </Button>
        </>
      }
    >
      <p className={styles['quiet']}>
        Nothing recorded is lost: choose a plan, and see below what it would change.
      </p>
      <PlanChoice plans={plans ?? []} chosen={chosen} onChoose={setChosen} />
      {chosen !== null && <Foreseen projectId={projectId} stagePlanId={chosen} />}
      <ProblemNotice problem={following.problem} />
    </Dialog>
  );
}

const HOWS = [
  { how: 'stays', words: 'Stays, with all that is recorded' },
  { how: 'fresh', words: 'New' },
  { how: 'kept', words: 'Not in the plan, kept in the history' },
  { how: 'gone', words: 'Goes: nothing is recorded of it' },
] as const;

interface ForeseenProps extends Pick<FollowPlanDialogProps, 'projectId'> {
  readonly stagePlanId: StagePlan['id'];
}

/** What the plan would change, before it is followed. */
function Foreseen({ projectId, stagePlanId }: ForeseenProps) {
  const { value: stages, problem } = useRead('project:foresee-plan', { projectId, stagePlanId });
  if (stages === undefined) return <ProblemNotice problem={problem} />;
  const groups = HOWS.map((group) => ({ ...group, of: stages.filter(({ how }) => how === group.how) }));
  return (
    <section aria-label="What would change" aria-live="polite">
      <dl className={styles['foreseen']}>
        {groups
          .filter(({ of }) => of.length > 0)
          .map(({ how, words, of }) => (
            <div key={how}>
              <dt>{words}</dt>
              <dd>{of.map(({ name, isSkipped }) => (isSkipped ? `${name} (skipped)` : name)).join(', ')}</dd>
            </div>
          ))}
      </dl>
    </section>
  );
}

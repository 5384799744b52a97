import { useState } from 'react';
import type { ProjectSpread, StagePlan } from '#core/contract/projects';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/button';
import { Dialog } from '#renderer/ui/dialog';
import { ProblemNotice } from '#renderer/ui/problem-notice';
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
        Stages that match keep everything recorded of them. A stage the plan does not know goes if nothing is
        recorded of it; otherwise it stays, as done or as skipped.
      </p>
      <PlanChoice plans={plans ?? []} chosen={chosen} onChoose={setChosen} />
      <ProblemNotice problem={following.problem} />
    </Dialog>
  );
}

import { useState } from 'react';
import type { ProjectSpread } from '#core/contract/projects';
import { currentStage, openGateItems, type Stage, type StageState } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { stageMove } from '#renderer/text/stage-words';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { BackDialog } from './trips/back-dialog';
import { GateDialog } from './gate-dialog';
import { SendDialog } from './trips/send-dialog';

interface StageActionProps {
  readonly stage: ProjectSpread['stages'][number];
  readonly spread: ProjectSpread;
}

/** The one action of a stage's page: what moves it on, asking first for what that takes. */
export function StageAction({ stage, spread }: StageActionProps) {
  // What was asked in one state is not asked in the next, which may be read before the dialog has closed.
  const [askedIn, setAskedIn] = useState<StageState | null>(null);
  const moving = useWrite('stage:move');
  const move = stageMove(stage);
  const close = () => setAskedIn(null);
  const asks = (state: StageState) => askedIn === state && stage.state === state;
  const moveTo = (to: StageState) => void moving.write({ stageId: stage.id, to });
  if (move === null) {
    return (
      <>
        <ProblemNotice problem={moving.problem} />
        <Button disabled={moving.isWriting} onClick={() => moveTo('in-hand')}>
          Take it up again
        </Button>
        <OnwardLink stage={stage} stages={spread.stages} />
      </>
    );
  }
  return (
    <>
      <ProblemNotice problem={moving.problem} />
      <Button
        look="main"
        disabled={moving.isWriting}
        onClick={() => (move.how === 'here' ? moveTo(move.to) : setAskedIn(stage.state))}
      >
        {move.verb}
      </Button>
      {asks('planned') && (
        <GateDialog stage={stage} open={openGateItems(stage, spread.stages)} onClose={close} />
      )}
      {asks('in-hand') && <SendDialog stage={stage} spread={spread} onClose={close} />}
      {asks('out') && <BackDialog stage={stage} trips={spread.trips} onClose={close} />}
    </>
  );
}

/** From a stage that is over, straight to the one the piece now stands at; from the last one, to the whole piece. */
function OnwardLink({ stage, stages }: { readonly stage: Stage; readonly stages: readonly Stage[] }) {
  const next = currentStage(stages);
  const piece = `/projects/${stage.projectId}`;
  return (
    <ButtonLink look="main" to={next === null ? piece : `${piece}/stages/${next.id}`}>
      {next === null ? 'See the whole piece' : `On to “${next.name}”`}
    </ButtonLink>
  );
}

import { useState } from 'react';
import { useSearchParams } from 'react-router';
import type { ProjectSpread } from '#core/contract/projects';
import type { Measurements } from '#core/domain/measurements';
import { currentStage, type Stage, type StageState } from '#core/domain/stage';
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
  readonly measurements: Measurements;
}

/** The main action of a stage’s page: it moves the stage on, and opens a dialog first when that needs an answer. */
export function StageAction({ stage, spread, measurements }: StageActionProps) {
  // The dialog belongs to the state it was opened in: the next state may arrive before the dialog has closed.
  // A link to “It is back” opens its dialog.
  const [params] = useSearchParams();
  const [askedIn, setAskedIn] = useState<StageState | null>(params.has('back') ? 'out' : null);
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
          Reopen this stage
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
        <GateDialog stage={stage} stages={spread.stages} measurements={measurements} onClose={close} />
      )}
      {asks('in-hand') && (
        <SendDialog stage={stage} spread={spread} measurements={measurements} onClose={close} />
      )}
      {asks('out') && <BackDialog stage={stage} trips={spread.trips} onClose={close} />}
    </>
  );
}

/** Leads from a finished stage to the current one; from the last stage, to the project. */
function OnwardLink({ stage, stages }: { readonly stage: Stage; readonly stages: readonly Stage[] }) {
  const next = currentStage(stages);
  const project = `/projects/${stage.projectId}`;
  return (
    <ButtonLink look="main" to={next === null ? project : `${project}/stages/${next.id}`}>
      {next === null ? 'See the whole project' : `On to “${next.name}”`}
    </ButtonLink>
  );
}

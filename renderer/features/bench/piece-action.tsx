import { useWrite } from '#renderer/bridge/query';
import { stageMove } from '#renderer/text/stage-words';
import { Button, ButtonLink, type ButtonLook } from '#renderer/ui/button';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import type { BenchPiece } from './view-model';

interface PieceActionProps {
  readonly piece: BenchPiece;
  readonly look: ButtonLook;
}

/** The one action that moves a piece on: done here where one press is enough, on the stage's page where more must be said. */
export function PieceAction({ piece, look }: PieceActionProps) {
  const { glance, standing } = piece;
  const { project, stages } = glance;
  const moving = useWrite('stage:move');
  const archiving = useWrite('project:archive');
  const { now } = standing;
  const isSmall = look !== 'main';
  if (now === null) {
    const putAway = () => void archiving.write({ projectId: project.id, archived: true });
    return (
      <Button look={look} isSmall={isSmall} onClick={putAway} disabled={archiving.isWriting}>
        Put it away
      </Button>
    );
  }
  const page = `/projects/${project.id}/stages/${now.id}`;
  const move = stageMove(now, stages);
  if (move === null || move.how === 'on-its-page' || now.heldUpBy !== '') {
    return (
      <ButtonLink look={look} isSmall={isSmall} to={page}>
        {move?.how === 'on-its-page' && now.heldUpBy === '' ? move.verb : 'Look at it'}
      </ButtonLink>
    );
  }
  return (
    <>
      <ProblemNotice problem={moving.problem} />
      <Button
        look={look}
        isSmall={isSmall}
        disabled={moving.isWriting}
        onClick={() => void moving.write({ stageId: now.id, to: move.to })}
      >
        {move.verb}
      </Button>
    </>
  );
}

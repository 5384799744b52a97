import { useWrite } from '#renderer/bridge/query';
import { Button, type ButtonLook } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { StageMoveButton } from '#renderer/shared/stage-move-button';
import type { BenchProject } from './view-model';

interface ProjectActionProps {
  readonly piece: BenchProject;
  readonly look: ButtonLook;
}

/** What moves a piece on; a finished one is put away. */
export function ProjectAction({ piece, look }: ProjectActionProps) {
  const { project } = piece.glance;
  const { now } = piece.standing;
  const moving = useWrite('stage:move');
  const archiving = useWrite('project:archive');
  if (now === null) {
    const putAway = () => void archiving.write({ projectId: project.id, archived: true });
    return (
      <Button look={look} isSmall={look !== 'main'} onClick={putAway} disabled={archiving.isWriting}>
        Put it away
      </Button>
    );
  }
  return (
    <>
      <ProblemNotice problem={moving.problem} />
      <StageMoveButton
        projectId={project.id}
        stage={now}
        look={look}
        isBusy={moving.isWriting}
        onMove={(stageId, to) => void moving.write({ stageId, to })}
      />
    </>
  );
}

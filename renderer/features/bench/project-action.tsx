import { useWrite } from '#renderer/bridge/query';
import { Button, type ButtonLook } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { StageMoveButton } from '#renderer/shared/stage-move-button';
import type { BenchProject } from './bench-groups';

interface ProjectActionProps {
  readonly item: BenchProject;
  readonly look: ButtonLook;
}

/** The next move of a project; a finished one is archived. */
export function ProjectAction({ item, look }: ProjectActionProps) {
  const { project } = item.glance;
  const { now } = item.status;
  const moving = useWrite('stage:move');
  const archiving = useWrite('project:archive');
  if (now === null) {
    const archive = () => void archiving.write({ projectId: project.id, archived: true });
    return (
      <Button look={look} isSmall={look !== 'main'} onClick={archive} disabled={archiving.isWriting}>
        Archive
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

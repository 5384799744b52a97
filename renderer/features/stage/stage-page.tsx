import type { ProjectId, StageId } from '#core/domain/ids';
import { Page } from '#renderer/ui/page';

interface StagePageProps {
  readonly projectId: ProjectId;
  readonly stageId: StageId;
}

/** One stage of a project: what is done in it, and the numbers it needs. */
export function StagePage({ projectId }: StagePageProps) {
  return (
    <Page title="Stage" back={{ to: `/projects/${projectId}`, words: 'Back to the project' }}>
      <p />
    </Page>
  );
}

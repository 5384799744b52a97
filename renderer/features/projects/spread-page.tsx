import type { ProjectId } from '#core/domain/ids';
import { Page } from '#renderer/ui/page';

export function SpreadPage({ projectId }: { readonly projectId: ProjectId }) {
  return (
    <Page title="Project">
      <p>{projectId}</p>
    </Page>
  );
}

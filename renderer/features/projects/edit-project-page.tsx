import type { ProjectId } from '#core/domain/ids';
import { Page } from '#renderer/ui/page';

export function EditProjectPage({ projectId }: { readonly projectId: ProjectId }) {
  return (
    <Page title="Edit">
      <p>{projectId}</p>
    </Page>
  );
}

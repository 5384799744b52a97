import { Page } from '#renderer/ui/page';

export function NewProjectPage() {
  return (
    <Page title="New project">
      <p />
    </Page>
  );
}

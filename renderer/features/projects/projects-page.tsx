import { Page } from '#renderer/ui/page';

export function ProjectsPage() {
  return (
    <Page title="Projects">
      <p />
    </Page>
  );
}

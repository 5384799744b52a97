import { Page } from '#renderer/ui/page';

export function BenchPage() {
  return (
    <Page title="Bench">
      <p />
    </Page>
  );
}

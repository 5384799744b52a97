import { Page } from '#renderer/ui/page';

/** The workshop's name, habits, stage plans and backups. */
export function WorkshopPage() {
  return (
    <Page title="Workshop">
      <p />
    </Page>
  );
}

import { Page } from '#renderer/ui/page';

/** All fabrics of the workshop. */
export function StashPage() {
  return (
    <Page title="Stash">
      <p />
    </Page>
  );
}

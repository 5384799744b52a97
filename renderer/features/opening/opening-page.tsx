import type { Workshop } from '#core/domain/workshop';
import { Page } from '#renderer/ui/page';

export function OpeningPage({ workshop }: { readonly workshop: Workshop }) {
  return (
    <Page title="Ringbound">
      <p>{workshop.name}</p>
    </Page>
  );
}

import type { FabricId } from '#core/domain/ids';
import { Page } from '#renderer/ui/page';

interface FabricPageProps {
  readonly fabricId: FabricId;
}

/** One fabric: its pieces and its ledger. */
export function FabricPage({ fabricId }: FabricPageProps) {
  return (
    <Page title="Fabric" back={{ to: '/stash', words: 'Stash' }}>
      <p>{fabricId}</p>
    </Page>
  );
}

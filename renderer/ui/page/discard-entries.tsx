import type { FormDraft } from '../base/draft';
import { Button } from './button';

/** Takes back all that was entered in a form and not saved. Drawn only while there is something to take back. */
export function DiscardEntries({ draft }: { readonly draft: FormDraft }) {
  if (!draft.hasEntries) return null;
  return (
    <Button look="quiet" onClick={draft.forget}>
      Discard what you entered
    </Button>
  );
}

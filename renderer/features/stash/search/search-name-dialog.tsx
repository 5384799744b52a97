import type { SavedSearch, StashSearch } from '#core/domain/stash-filter';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface SearchNameDialogProps {
  /** The search to rename; null to save `query` as a new one. */
  readonly search: SavedSearch | null;
  readonly query: StashSearch;
  readonly onClose: () => void;
}

/** Asks for the name of a search. */
export function SearchNameDialog({ search, query, onClose }: SearchNameDialogProps) {
  const draft = useFormDraft(`search ${search?.id ?? 'new'}`);
  const [name, setName] = useDraftValue(draft, 'name', search?.name ?? query.search);
  const saving = useDialogSave(useSaveSearch(search, query), onClose, draft);
  return (
    <DialogForm
      draft={draft}
      title={search === null ? 'Save this search' : 'Rename the search'}
      saving={saving}
      onSave={() => saving.save(name)}
      onClose={onClose}
      className={layout['stack']}
    >
      <TextField
        label="Name"
        help="The words, filters, order and groups are saved with it."
        value={name}
        maximum={60}
        autoFocus
        emptyProblem="Give the search a name, such as Blue for borders."
        onChange={setName}
      />
    </DialogForm>
  );
}

function useSaveSearch(search: SavedSearch | null, query: StashSearch) {
  const saving = useWrite('search:save');
  const renaming = useWrite('search:rename');
  return search === null
    ? { ...saving, write: (name: string) => saving.write({ name, asked: query }) }
    : { ...renaming, write: (name: string) => renaming.write({ searchId: search.id, name }) };
}

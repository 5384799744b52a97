import { useState } from 'react';
import type { SavedSearch, StashSearch } from '#core/domain/stash-filter';
import { useWrite } from '#renderer/bridge/query';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

interface SearchNameDialogProps {
  /** The search that gets another name; null for one that is saved first. */
  readonly search: SavedSearch | null;
  readonly query: StashSearch;
  readonly onClose: () => void;
}

/** Asks what a search is called. */
export function SearchNameDialog({ search, query, onClose }: SearchNameDialogProps) {
  const [name, setName] = useState(search?.name ?? query.search);
  const saving = useWrite('search:save');
  const renaming = useWrite('search:rename');
  const keep = async () => {
    const answer =
      search === null
        ? await saving.write({ name, asked: query })
        : await renaming.write({ searchId: search.id, name });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={search === null ? 'Save this search' : 'Rename a search'}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not now</Button>
          <Button
            look="main"
            type="submit"
            form="search-name"
            disabled={saving.isWriting || renaming.isWriting}
          >
            {search === null ? 'Save it' : 'Rename it'}
          </Button>
        </>
      }
    >
      <Form id="search-name" className={styles['stack']} onSubmit={() => void keep()}>
        <TextField
          label="Name"
          help="Its words, filters, order and groups are kept with it."
          value={name}
          maximum={60}
          autoFocus
          emptyProblem="Give the search a name, such as Blue for borders."
          onChange={setName}
        />
      </Form>
      <ProblemNotice problem={saving.problem ?? renaming.problem} />
    </Dialog>
  );
}

import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { SavedSearch, StashSearch } from '#core/domain/stash-filter';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SearchNameDialog } from './search-name-dialog';
import styles from './search.module.css';
import { isSameQuery } from './stash-query';

interface SavedSearchesProps {
  readonly query: StashSearch;
  /** Whether the query is more than the whole stash, so that saving it makes sense. */
  readonly canSave: boolean;
  readonly onOpen: (query: StashSearch) => void;
}

/** The saved searches. Alt and a number opens one of the first nine. */
export function SavedSearches({ query, canSave, onOpen }: SavedSearchesProps) {
  const { value: searches = [], problem } = useRead('search:list', {});
  const deleting = useWrite('search:delete');
  const [named, setNamed] = useState<SavedSearch | 'new' | null>(null);
  const [isChanging, setIsChanging] = useState(false);
  useNumberKeys(searches, onOpen);
  const isSaved = searches.some((one) => isSameQuery(one.asked, query));
  if (searches.length === 0 && !canSave) return null;
  return (
    <section className={styles['saved']} aria-label="Saved searches">
      {searches.length > 0 && (
        <ul className={styles['savedList']}>
          {searches.map((search) => (
            <li key={search.id} className={styles['savedOne']}>
              <Button
                isSmall
                aria-pressed={isSameQuery(search.asked, query)}
                onClick={() => onOpen(search.asked)}
              >
                {search.name}
              </Button>
              {isChanging && (
                <>
                  <Button
                    look="quiet"
                    isSmall
                    aria-label={`Rename ${search.name}`}
                    onClick={() => setNamed(search)}
                  >
                    Rename
                  </Button>
                  <Button
                    look="quiet"
                    isSmall
                    aria-label={`Delete ${search.name}`}
                    onClick={() => void deleting.write({ searchId: search.id })}
                  >
                    Delete
                  </Button>
                </>
              )}
            </li>
          ))}
        </ul>
      )}
      {canSave && !isSaved && (
        <Button look="quiet" isSmall onClick={() => setNamed('new')}>
          Save this search
        </Button>
      )}
      {searches.length > 0 && (
        <Button look="quiet" isSmall aria-expanded={isChanging} onClick={() => setIsChanging(!isChanging)}>
          {isChanging ? 'Done' : 'Rename or delete'}
        </Button>
      )}
      <ProblemNotice problem={problem ?? deleting.problem} />
      {named !== null && (
        <SearchNameDialog
          search={named === 'new' ? null : named}
          query={query}
          onClose={() => setNamed(null)}
        />
      )}
    </section>
  );
}

function useNumberKeys(searches: readonly SavedSearch[], onOpen: (query: StashSearch) => void): void {
  const latest = useRef({ searches, onOpen });
  useLayoutEffect(() => {
    latest.current = { searches, onOpen };
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (!event.altKey || event.ctrlKey || event.metaKey || !/^Digit[1-9]$/.test(event.code)) return;
      const search = latest.current.searches[Number(event.code.slice(-1)) - 1];
      if (search === undefined || document.querySelector('dialog[open]') !== null) return;
      event.preventDefault();
      latest.current.onOpen(search.asked);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
}

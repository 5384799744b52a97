import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { SavedSearch, StashSearch } from '#core/domain/stash-filter';
import { useRead, useWrite } from '#renderer/bridge/query';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SearchNameDialog } from './search-name-dialog';
import { isSameQuery } from './stash-query';

interface SavedSearchesProps {
  readonly query: StashSearch;
  /** Whether what is shown is worth a name of its own. */
  readonly isAsked: boolean;
  readonly onOpen: (query: StashSearch) => void;
}

/** The searches the maker kept by name: each opened by a press, the first nine by Alt and their number too. */
export function SavedSearches({ query, isAsked, onOpen }: SavedSearchesProps) {
  const { value: searches = [], problem } = useRead('search:list', {});
  const deleting = useWrite('search:delete');
  const [asked, setAsked] = useState<SavedSearch | 'new' | null>(null);
  const [isChanging, setIsChanging] = useState(false);
  useNumberKeys(searches, onOpen);
  const isKept = searches.some((one) => isSameQuery(one.asked, query));
  if (searches.length === 0 && !isAsked) return null;
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
                    onClick={() => setAsked(search)}
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
      {isAsked && !isKept && (
        <Button look="quiet" isSmall onClick={() => setAsked('new')}>
          Save this search
        </Button>
      )}
      {searches.length > 0 && (
        <Button look="quiet" isSmall aria-expanded={isChanging} onClick={() => setIsChanging(!isChanging)}>
          {isChanging ? 'Done' : 'Rename or delete'}
        </Button>
      )}
      <ProblemNotice problem={problem ?? deleting.problem} />
      {asked !== null && (
        <SearchNameDialog
          search={asked === 'new' ? null : asked}
          query={query}
          onClose={() => setAsked(null)}
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
    const hear = (event: KeyboardEvent): void => {
      if (!event.altKey || event.ctrlKey || event.metaKey || !/^Digit[1-9]$/.test(event.code)) return;
      const search = latest.current.searches[Number(event.code.slice(-1)) - 1];
      if (search === undefined || document.querySelector('dialog[open]') !== null) return;
      event.preventDefault();
      latest.current.onOpen(search.asked);
    };
    window.addEventListener('keydown', hear);
    return () => window.removeEventListener('keydown', hear);
  }, []);
}

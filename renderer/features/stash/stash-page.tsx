import { useState } from 'react';
import { useSearchParams } from 'react-router';
import type { StashSearch } from '#core/domain/stash-filter';
import { parsePieceCode } from '#core/stash/piece-code';
import { useRead } from '#renderer/bridge/query';
import { AddFabricDialog } from '#renderer/features/stash/fabric/add-fabric-dialog';
import { LINES_AT_ONCE, listed } from '#renderer/features/stash/search/fabric-row';
import { useFindByCode } from '#renderer/features/stash/search/find-by-code';
import { FoundByCode } from '#renderer/features/stash/search/found-by-code';
import { FoundFabrics } from '#renderer/features/stash/search/found-fabrics';
import { SavedSearches } from '#renderer/features/stash/search/saved-searches';
import { StashFilters } from '#renderer/features/stash/search/stash-filters';
import { isFiltered, paramsOfQuery, queryOfParams } from '#renderer/features/stash/search/stash-query';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { useDisplay } from '#renderer/ui/base/display';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { LabelsDialog } from './labels-dialog';
import styles from './stash.module.css';

const VIEWS = [
  { value: 'list', words: 'As a list' },
  { value: 'shelf', words: 'As pictures' },
] as const;

/** All fabrics of the workshop. With `?new` in its address it asks for a new one. */
export function StashPage() {
  const [params, setParams] = useSearchParams();
  // The address follows the fields, not the other way round: it changes too late for the next key.
  const [query, setQuery] = useState(() => queryOfParams(params));
  const [isNarrowing, setIsNarrowing] = useState(isNarrowed(query));
  const [isLabeling, setIsLabeling] = useState(false);
  const { locale } = useDisplay();
  const found = useRead(
    'fabric:list',
    { ...listed(query, null), offset: 0, limit: LINES_AT_ONCE },
    { keepsPrevious: true },
  );
  const total = found.value?.total;
  const setAddress = (parts: Readonly<Record<string, string | null>>) => {
    setParams(
      (before) => {
        for (const [name, value] of Object.entries(parts)) {
          if (value === null) before.delete(name);
          else before.set(name, value);
        }
        return before;
      },
      { replace: true },
    );
  };
  const ask = (next: StashSearch) => {
    setQuery(next);
    setAddress(paramsOfQuery(next));
  };
  const typedCode = parsePieceCode(query.search);
  const isCode = typedCode.ok || typedCode.error.code === 'mistyped';
  const byCode = useFindByCode();
  const isAsked = query.search !== '' || isFiltered(query.filter);
  const isNothingYet = total === 0 && !isAsked;
  const add = (
    <Button look="main" onClick={() => setAddress({ new: '' })}>
      Add a fabric
    </Button>
  );
  return (
    <Page
      title="Stash"
      action={add}
      aside={
        <>
          {total !== undefined && total > 0 && <Button onClick={() => setIsLabeling(true)}>Labels</Button>}
          <ButtonLink to="/stash/bring-in">Bring in a table</ButtonLink>
          <ButtonLink to="/stash/take-out">Take it out</ButtonLink>
          <ButtonLink to="/stash/places">Places</ButtonLink>
          <ButtonLink to="/stash/kinds">Kinds</ButtonLink>
          <ButtonLink to="/stash/insight">Insight</ButtonLink>
        </>
      }
    >
      {total !== undefined && !isNothingYet && (
        <>
          <div className={styles['finder']}>
            <div
              onKeyDown={(event) => {
                if (event.key === 'Enter' && typedCode.ok) void byCode.find(typedCode.value);
              }}
            >
              <TextField
                label="Find"
                value={query.search}
                placeholder="name, color, print, shelf, code"
                maximum={200}
                onChange={(search) => ask({ ...query, search })}
              />
            </div>
            <p className={styles['total']} role="status">
              {total === 0 && typedCode.ok ? 'Looked up as a code' : countWords(total, isAsked, locale)}
            </p>
            <Button aria-expanded={isNarrowing} onClick={() => setIsNarrowing(!isNarrowing)}>
              Narrow it down
            </Button>
            <Choice
              label="Shown"
              value={query.view}
              options={VIEWS}
              onChange={(view) => ask({ ...query, view })}
            />
          </div>
          {isNarrowing && <StashFilters query={query} onChange={ask} />}
          <SavedSearches
            query={query}
            isAsked={isAsked || isNarrowed(query)}
            onOpen={(saved) => {
              ask(saved);
              setIsNarrowing(isNarrowed(saved));
            }}
          />
        </>
      )}
      <ProblemNotice problem={found.problem} />
      {isNothingYet && (
        <EmptyState title="No fabrics yet">
          <p>
            Write down what lies on the shelf: each fabric with a photo, and its pieces by size. From then on
            the notebook knows what is there, what is set aside for whom, and what a piece has cost.
          </p>
        </EmptyState>
      )}
      {isCode && total !== undefined && (
        <FoundByCode code={typedCode.ok ? typedCode.value : null} isWord={total > 0} />
      )}
      {total === 0 && isAsked && !isCode && <NothingFound isFilteredOut={isFiltered(query.filter)} />}
      <FoundFabrics query={query} total={total ?? 0} />
      {isLabeling && (
        <LabelsDialog
          of={{ of: 'found', search: query.search, filter: query.filter }}
          onClose={() => setIsLabeling(false)}
        />
      )}
      {byCode.dialog}
      {params.has('new') && <AddFabricDialog onClose={() => setAddress({ new: null })} />}
    </Page>
  );
}

/** Whether the fields that narrow it down say anything. */
function isNarrowed({ filter, order, grouping }: StashSearch): boolean {
  return isFiltered(filter) || order !== 'name' || grouping !== null;
}

function NothingFound({ isFilteredOut }: { readonly isFilteredOut: boolean }) {
  if (isFilteredOut) {
    return (
      <EmptyState title="Nothing like that">
        <p>Ask for less: a smaller size, any place, or any kind. “Show every fabric” takes all of it back.</p>
      </EmptyState>
    );
  }
  return (
    <EmptyState title="Nothing by that word">
      <p>Search by the beginning of a word: of the name, the color, the print, the shelf or the shop.</p>
    </EmptyState>
  );
}

function countWords(total: number, isSearch: boolean, locale: string): string {
  const count = new Intl.NumberFormat(locale).format(total);
  return `${count} ${total === 1 ? 'fabric' : 'fabrics'}${isSearch ? ' found' : ''}`;
}

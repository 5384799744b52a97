import { useState } from 'react';
import { useSearchParams } from 'react-router';
import type { StashSearch } from '#core/domain/stash-filter';
import { parsePieceCode, type PieceCode, type PieceCodeProblem } from '#core/stash/piece-code';
import type { Result } from '#core/result';
import { useRead } from '#renderer/bridge/query';
import { AddFabricDialog } from '#renderer/features/stash/fabric/add-fabric-dialog';
import { LINES_AT_ONCE, listInput } from '#renderer/features/stash/search/fabric-row';
import { FoundByCode } from '#renderer/features/stash/search/found-by-code';
import { FoundFabrics } from '#renderer/features/stash/search/found-fabrics';
import { SavedSearches } from '#renderer/features/stash/search/saved-searches';
import { StashFilters } from '#renderer/features/stash/search/stash-filters';
import { StashFinder } from '#renderer/features/stash/search/stash-finder';
import { isFiltered, paramsOfQuery, queryOfParams } from '#renderer/features/stash/search/stash-query';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { LabelsDialog } from './labels-dialog';

/** All fabrics of the workshop. With `?new` in its address the dialog for a new fabric is open. */
export function StashPage() {
  const { query, changeQuery, isAdding, setIsAdding } = useStashAddress();
  const [isLabeling, setIsLabeling] = useState(false);
  const input = { ...listInput(query, null), offset: 0, limit: LINES_AT_ONCE };
  const found = useRead('fabric:list', input, { keepsPrevious: true });
  const total = found.value?.total;
  const isEmptyStash = total === 0 && query.search === '' && !isFiltered(query.filter);
  return (
    <Page
      title="Stash"
      action={
        <Button look="main" onClick={() => setIsAdding(true)}>
          Add fabric
        </Button>
      }
      aside={
        <>
          {total !== undefined && total > 0 && <Button onClick={() => setIsLabeling(true)}>Labels</Button>}
          <ButtonLink to="/stash/import">Import a spreadsheet</ButtonLink>
          <ButtonLink to="/stash/export">Export your stash</ButtonLink>
          <ButtonLink to="/stash/places">Places</ButtonLink>
          <ButtonLink to="/stash/kinds">Kinds</ButtonLink>
          <ButtonLink to="/stash/numbers">Stash in numbers</ButtonLink>
        </>
      }
    >
      <ProblemNotice problem={found.problem} />
      {isEmptyStash ? (
        <EmptyState title="No fabrics yet">
          <p>
            Add the fabrics you have: each with a photo, and its pieces by size. The notebook then knows what
            you have, what is set aside for which project, and what each project’s fabric costs.
          </p>
        </EmptyState>
      ) : (
        <SearchedStash query={query} total={total} onChange={changeQuery} />
      )}
      {isLabeling && (
        <LabelsDialog
          of={{ of: 'found', search: query.search, filter: query.filter }}
          onClose={() => setIsLabeling(false)}
        />
      )}
      {isAdding && <AddFabricDialog onClose={() => setIsAdding(false)} />}
    </Page>
  );
}

/** The search in the page's address, so that it survives a look at another page. */
function useStashAddress() {
  const [params, setParams] = useSearchParams();
  // The address follows the fields, not the other way round: it changes too late for the next key.
  const [query, setQuery] = useState(() => queryOfParams(params));
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
  return {
    query,
    changeQuery: (next: StashSearch) => {
      setQuery(next);
      setAddress(paramsOfQuery(next));
    },
    isAdding: params.has('new'),
    setIsAdding: (isAdding: boolean) => setAddress({ new: isAdding ? '' : null }),
  };
}

interface SearchedStashProps {
  readonly query: StashSearch;
  /** Undefined while the first answer is read. */
  readonly total: number | undefined;
  readonly onChange: (query: StashSearch) => void;
}

function SearchedStash({ query, total, onChange }: SearchedStashProps) {
  const [showsFilters, setShowsFilters] = useState(hasOptions(query));
  const code = parsePieceCode(query.search);
  const isSearch = query.search !== '' || isFiltered(query.filter);
  return (
    <>
      {total !== undefined && (
        <>
          <StashFinder
            query={query}
            total={total}
            code={code}
            showsFilters={showsFilters}
            onShowFilters={setShowsFilters}
            onChange={onChange}
          />
          {showsFilters && <StashFilters query={query} onChange={onChange} />}
          <SavedSearches
            query={query}
            canSave={isSearch || hasOptions(query)}
            onOpen={(saved) => {
              onChange(saved);
              setShowsFilters(hasOptions(saved));
            }}
          />
          <SearchResult code={code} total={total} isSearch={isSearch} query={query} />
        </>
      )}
      <FoundFabrics query={query} total={total ?? 0} />
    </>
  );
}

interface SearchResultProps {
  readonly code: Result<PieceCode, PieceCodeProblem>;
  readonly total: number;
  readonly isSearch: boolean;
  readonly query: StashSearch;
}

/** What the list of fabrics does not show: a piece found by its code, or why nothing was found. */
function SearchResult({ code, total, isSearch, query }: SearchResultProps) {
  if (code.ok || code.error.code === 'mistyped') {
    return <FoundByCode code={code.ok ? code.value : null} findsFabrics={total > 0} />;
  }
  if (total > 0 || !isSearch) return null;
  return (
    <EmptyState title="No fabric found">
      <p>
        {isFiltered(query.filter)
          ? 'Ask for less, such as a smaller size, any place or any kind, or clear the filters.'
          : 'Search by the beginning of a word in the name, color, print, place or shop.'}
      </p>
    </EmptyState>
  );
}

/** Whether the filters, order or groups differ from the start. */
function hasOptions({ filter, order, grouping }: StashSearch): boolean {
  return isFiltered(filter) || order !== 'name' || grouping !== null;
}

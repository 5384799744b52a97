import { useState } from 'react';
import { useSearchParams } from 'react-router';
import { useRead } from '#renderer/bridge/query';
import { Button, ButtonLink } from '#renderer/ui/button';
import { useDisplay } from '#renderer/ui/display';
import { EmptyState } from '#renderer/ui/empty-state';
import { Page } from '#renderer/ui/page';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import { TextField } from '#renderer/ui/text-field';
import { VirtualList } from '#renderer/ui/virtual-list';
import { AddFabricDialog } from './add-fabric-dialog';
import { FabricLine, LINES_AT_ONCE } from './fabric-row';
import styles from './stash.module.css';

const LINE_HEIGHT = 88;

/** All fabrics of the workshop. With `?new` in its address it asks for a new one. */
export function StashPage() {
  const [params, setParams] = useSearchParams();
  // The address follows the field, not the other way round: it changes too late for the next key.
  const [search, setSearch] = useState(params.get('search') ?? '');
  const { locale } = useDisplay();
  const found = useRead('fabric:list', { search, offset: 0, limit: LINES_AT_ONCE }, { keepsPrevious: true });
  const total = found.value?.total;
  const setParam = (name: string, value: string | null) => {
    setParams(
      (before) => {
        if (value === null) before.delete(name);
        else before.set(name, value);
        return before;
      },
      { replace: true },
    );
  };
  const isNothingYet = total === 0 && search === '';
  const add = (
    <Button look="main" onClick={() => setParam('new', '')}>
      Add a fabric
    </Button>
  );
  return (
    <Page
      title="Stash"
      action={add}
      aside={
        <>
          <ButtonLink to="/stash/places">Places</ButtonLink>
          <ButtonLink to="/stash/kinds">Kinds</ButtonLink>
        </>
      }
    >
      {total !== undefined && !isNothingYet && (
        <div className={styles['finder']}>
          <TextField
            label="Find"
            value={search}
            placeholder="name, color, print, shelf"
            maximum={200}
            onChange={(text) => {
              setSearch(text);
              setParam('search', text === '' ? null : text);
            }}
          />
          <p className={styles['total']} role="status">
            {countWords(total, search !== '', locale)}
          </p>
        </div>
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
      {total === 0 && !isNothingYet && (
        <EmptyState title="Nothing by that word">
          <p>Search by the beginning of a word: of the name, the color, the print, the shelf or the shop.</p>
        </EmptyState>
      )}
      <VirtualList label="Fabrics" items={placesUpTo(total ?? 0)} keyOf={String} estimate={LINE_HEIGHT}>
        {(index) => <FabricLine search={search} index={index} />}
      </VirtualList>
      {params.has('new') && <AddFabricDialog onClose={() => setParam('new', null)} />}
    </Page>
  );
}

function countWords(total: number, isSearch: boolean, locale: string): string {
  const count = new Intl.NumberFormat(locale).format(total);
  return `${count} ${total === 1 ? 'fabric' : 'fabrics'}${isSearch ? ' found' : ''}`;
}

function placesUpTo(total: number): readonly number[] {
  return Array.from({ length: total }, (_place, index) => index);
}

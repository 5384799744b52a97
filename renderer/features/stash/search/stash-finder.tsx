import type { StashSearch } from '#core/domain/stash-filter';
import type { Result } from '#core/result';
import type { PieceCode, PieceCodeProblem } from '#core/stash/piece-code';
import { useDisplay } from '#renderer/ui/base/display';
import { Choice } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { useFindByCode } from './find-by-code';
import styles from './search.module.css';
import { isFiltered } from './stash-query';

const VIEWS = [
  { value: 'list', words: 'As a list' },
  { value: 'shelf', words: 'As pictures' },
] as const;

interface StashFinderProps {
  readonly query: StashSearch;
  readonly total: number;
  /** The search text read as the code of a piece. */
  readonly code: Result<PieceCode, PieceCodeProblem>;
  readonly showsFilters: boolean;
  readonly onShowFilters: (shows: boolean) => void;
  readonly onChange: (query: StashSearch) => void;
}

/** The search field of the stash. Enter opens the piece whose code is in it. */
export function StashFinder(props: StashFinderProps) {
  const { query, total, code, showsFilters, onShowFilters, onChange } = props;
  const { locale } = useDisplay();
  const byCode = useFindByCode();
  return (
    <>
      <div className={styles['finder']}>
        <div
          onKeyDown={(event) => {
            if (event.key === 'Enter' && code.ok) void byCode.find(code.value);
          }}
        >
          <TextField
            label="Find"
            value={query.search}
            placeholder="name, color, print, place, code"
            maximum={200}
            onChange={(search) => onChange({ ...query, search })}
          />
        </div>
        <p className={styles['total']} role="status">
          {total === 0 && code.ok ? 'Searched by code' : totalWords(total, query, locale)}
        </p>
        <Button aria-expanded={showsFilters} onClick={() => onShowFilters(!showsFilters)}>
          Filters
        </Button>
        <Choice
          label="View"
          value={query.view}
          options={VIEWS}
          onChange={(view) => onChange({ ...query, view })}
        />
      </div>
      {byCode.dialog}
    </>
  );
}

function totalWords(total: number, { search, filter }: StashSearch, locale: string): string {
  const count = new Intl.NumberFormat(locale).format(total);
  const isSearch = search !== '' || isFiltered(filter);
  return `${count} ${total === 1 ? 'fabric' : 'fabrics'}${isSearch ? ' found' : ''}`;
}

import {
  pieceKindSchema,
  type PieceKind,
  type PrintDirection,
  printDirectionSchema,
} from '#core/domain/stash';
import type { StashFilter, StashGrouping, StashOrder, StashSearch } from '#core/domain/stash-filter';
import { useRead } from '#renderer/bridge/query';
import { KIND_WORDS } from '#renderer/features/stash/fabric-words';
import { DIRECTION_WORDS } from '#renderer/features/stash/direction-words';
import { Button } from '#renderer/ui/page/button';
import { type Option, Select } from '#renderer/ui/fields/choice';
import { DateField } from '#renderer/ui/fields/date-field';
import { LengthField } from '#renderer/ui/fields/length-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { PriceFilter } from './price-filter';
import styles from './search.module.css';
import { isFiltered, withFilter } from './stash-query';
import { WantedField } from './wanted-field';

const KINDS: readonly Option<PieceKind | ''>[] = [
  { value: '', words: 'Any kind' },
  ...pieceKindSchema.options.map((value) => ({ value, words: KIND_WORDS[value].name })),
];

const DIRECTIONS: readonly Option<PrintDirection | ''>[] = [
  { value: '', words: 'Any print' },
  ...printDirectionSchema.options.map((value) => ({ value, words: DIRECTION_WORDS[value] })),
];

const ORDERS: readonly Option<StashOrder>[] = [
  { value: 'name', words: 'By name' },
  { value: 'newest', words: 'Newest first' },
  { value: 'oldest', words: 'Oldest first' },
  { value: 'most-free', words: 'Most free first' },
];

const GROUPINGS: readonly Option<StashGrouping | ''>[] = [
  { value: '', words: 'No groups' },
  { value: 'place', words: 'By place' },
  { value: 'kind', words: 'By kind' },
  { value: 'color', words: 'By color' },
  { value: 'supplier', words: 'By shop' },
];

interface StashFiltersProps {
  readonly query: StashSearch;
  readonly onChange: (query: StashSearch) => void;
}

/** The filters, order and grouping of the list. */
export function StashFilters({ query, onChange }: StashFiltersProps) {
  const { filter, order } = query;
  const places = useRead('place:list', {}).value ?? [];
  const set = <Part extends keyof StashFilter>(part: Part, value: StashFilter[Part] | undefined) =>
    onChange({ ...query, filter: withFilter(filter, part, value) });
  const placeOptions: readonly Option<string>[] = [
    { value: '', words: 'Any place' },
    ...places.map(({ id, path }) => ({ value: id, words: path })),
  ];
  return (
    <div className={styles['filters']}>
      <Select
        label="Kind"
        value={filter.kind ?? ''}
        options={KINDS}
        onChange={(kind) => set('kind', kind === '' ? undefined : kind)}
      />
      <Select
        label="Stored in"
        value={filter.placeId ?? ''}
        options={placeOptions}
        onChange={(id) => set('placeId', places.find((place) => place.id === id)?.id)}
      />
      <Select
        label="Print direction"
        value={filter.direction ?? ''}
        options={DIRECTIONS}
        onChange={(direction) => set('direction', direction === '' ? undefined : direction)}
      />
      <TextField
        label="Color"
        isOptional
        value={filter.color ?? ''}
        maximum={40}
        onChange={(color) => set('color', color.trim() === '' ? undefined : color)}
      />
      <AmountFilters filter={filter} onChange={set} />
      <PriceFilter value={filter.price} onChange={(price) => set('price', price)} />
      <Select
        label="Order"
        value={order}
        options={ORDERS}
        onChange={(chosen) => onChange({ ...query, order: chosen })}
      />
      <Select
        label="Groups"
        value={query.grouping ?? ''}
        options={GROUPINGS}
        onChange={(by) => onChange({ ...query, grouping: by === '' ? null : by })}
      />
      {isFiltered(filter) && (
        <div className={styles['clear']}>
          <Button look="quiet" onClick={() => onChange({ ...query, filter: {} })}>
            Clear filters
          </Button>
        </div>
      )}
    </div>
  );
}

interface AmountFiltersProps {
  readonly filter: StashFilter;
  readonly onChange: <Part extends keyof StashFilter>(
    part: Part,
    value: StashFilter[Part] | undefined,
  ) => void;
}

/** The filters for how much is free, what it is big enough for, and when it was bought. */
function AmountFilters({ filter, onChange }: AmountFiltersProps) {
  return (
    <>
      <LengthField
        label="Free in one piece"
        isOptional
        value={filter.freeAtLeast ?? null}
        minimum={1}
        onCommit={(length) => onChange('freeAtLeast', length ?? undefined)}
      />
      <LengthField
        label="Free in total"
        isOptional
        value={filter.freeInAll ?? null}
        minimum={1}
        onCommit={(length) => onChange('freeInAll', length ?? undefined)}
      />
      <WantedField value={filter.fits ?? null} onCommit={(fits) => onChange('fits', fits ?? undefined)} />
      <DateField
        label="Bought from"
        isOptional
        value={filter.boughtFrom ?? null}
        onChange={(date) => onChange('boughtFrom', date ?? undefined)}
      />
      <DateField
        label="Bought up to"
        isOptional
        value={filter.boughtUntil ?? null}
        onChange={(date) => onChange('boughtUntil', date ?? undefined)}
      />
    </>
  );
}

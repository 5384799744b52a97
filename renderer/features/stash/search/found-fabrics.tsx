import { useState } from 'react';
import type { FabricGroup } from '#core/contract/stash';
import type { StashGroup, StashSearch } from '#core/domain/stash-filter';
import { useRead } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { useWidth } from '#renderer/ui/base/use-width';
import { VirtualList } from '#renderer/ui/page/virtual-list';
import { FabricCard, FabricLine } from './fabric-row';
import { GroupHeading } from './group-heading';
import styles from './search.module.css';

const LINE_HEIGHT = 88;
const CARD_WIDTH = 184;
const CARD_HEIGHT = 248;

interface FoundFabricsProps {
  readonly query: StashSearch;
  readonly total: number;
}

/** A row of the list: the heading of a group, or fabrics `from` to `to` of their group side by side. */
type ListRow =
  | { readonly kind: 'heading'; readonly found: FabricGroup }
  | {
      readonly kind: 'fabrics';
      readonly group: StashGroup | null;
      readonly from: number;
      readonly to: number;
    };

/** The fabrics found, with or without groups, as lines or as pictures. Only the visible rows are drawn. */
export function FoundFabrics({ query, total }: FoundFabricsProps) {
  const { grouping, view } = query;
  const [frame, width] = useWidth<HTMLDivElement>(4 * CARD_WIDTH);
  const across = view === 'shelf' ? Math.max(1, Math.floor(width / CARD_WIDTH)) : 1;
  const folds = useFolds(grouping ?? '');
  const groups = useRead(
    'fabric:groups',
    { search: query.search, filter: query.filter, by: grouping ?? 'kind' },
    { keepsPrevious: true, isOn: grouping !== null },
  );
  const found = groups.value ?? [];
  const rows =
    grouping === null
      ? fabricRows(null, total, across)
      : found.flatMap((one): readonly ListRow[] => [
          { kind: 'heading', found: one },
          ...(folds.isFolded(one.key) ? [] : fabricRows({ by: grouping, key: one.key }, one.fabrics, across)),
        ]);
  const listName = view === 'shelf' ? 'Fabrics as pictures' : 'Fabrics';
  return (
    <div ref={frame}>
      {grouping !== null && found.length > 1 && (
        <div className={styles['folds']}>
          <Button look="quiet" isSmall onClick={() => folds.foldAll(found.map(({ key }) => key))}>
            Close all groups
          </Button>
          <Button look="quiet" isSmall onClick={() => folds.foldAll([])}>
            Open all groups
          </Button>
        </div>
      )}
      <VirtualList
        label={listName}
        items={rows}
        keyOf={(row) => keyOf(row, across)}
        estimate={view === 'shelf' ? CARD_HEIGHT : LINE_HEIGHT}
      >
        {(row) => {
          if (row.kind === 'heading' && grouping !== null) {
            const { key } = row.found;
            return (
              <GroupHeading
                by={grouping}
                group={row.found}
                isFolded={folds.isFolded(key)}
                onFold={() => folds.toggle(key)}
              />
            );
          }
          return row.kind === 'fabrics' && <Fabrics row={row} query={query} across={across} />;
        }}
      </VirtualList>
    </div>
  );
}

interface FabricsProps {
  readonly row: Extract<ListRow, { kind: 'fabrics' }>;
  readonly query: StashSearch;
  readonly across: number;
}

function Fabrics({ row: { group, from, to }, query, across }: FabricsProps) {
  if (query.view === 'list') return <FabricLine query={query} group={group} index={from} />;
  return (
    <div
      className={styles['shelfRow']}
      style={{ gridTemplateColumns: `repeat(${String(across)}, minmax(0, 1fr))` }}
    >
      {Array.from({ length: to - from }, (_place, column) => (
        <FabricCard key={column} query={query} group={group} index={from + column} />
      ))}
    </div>
  );
}

function fabricRows(group: StashGroup | null, count: number, across: number): readonly ListRow[] {
  return Array.from({ length: Math.ceil(count / across) }, (_row, index) => ({
    kind: 'fabrics',
    group,
    from: index * across,
    to: Math.min(count, (index + 1) * across),
  }));
}

function keyOf(row: ListRow, across: number): string {
  return row.kind === 'heading'
    ? `heading ${row.found.key}`
    : `${String(across)} ${row.group?.key ?? ''} ${String(row.from)}`;
}

/** Which groups are closed; a change of grouping opens all. */
function useFolds(grouping: string) {
  const [folds, setFolds] = useState<{ readonly grouping: string; readonly keys: readonly string[] }>({
    grouping,
    keys: [],
  });
  const keys = folds.grouping === grouping ? folds.keys : [];
  const isFolded = (key: string) => keys.includes(key);
  return {
    isFolded,
    foldAll: (all: readonly string[]) => setFolds({ grouping, keys: all }),
    toggle: (key: string) =>
      setFolds({ grouping, keys: isFolded(key) ? keys.filter((one) => one !== key) : [...keys, key] }),
  };
}

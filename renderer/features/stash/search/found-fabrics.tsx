import { useState } from 'react';
import type { FabricGroup } from '#core/contract/stash';
import type { StashGroup, StashSearch } from '#core/domain/stash-filter';
import { useRead } from '#renderer/bridge/query';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { useWidth } from '#renderer/ui/base/use-width';
import { VirtualList } from '#renderer/ui/page/virtual-list';
import { FabricCard, FabricLine } from './fabric-row';
import { GroupHeading } from './group-heading';

const LINE_HEIGHT = 88;
const CARD_WIDTH = 184;
const CARD_HEIGHT = 248;

interface FoundFabricsProps {
  readonly query: StashSearch;
  readonly total: number;
}

/** A row of what is shown: the heading of a group, or fabrics beside each other from a place in their group on. */
type Slot =
  | { readonly kind: 'heading'; readonly found: FabricGroup }
  | {
      readonly kind: 'fabrics';
      readonly group: StashGroup | null;
      readonly from: number;
      readonly to: number;
    };

/** What was found, in groups or all in one: a line each, or as many pictures side by side as the window is wide. Only what is in sight is drawn. */
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
  const slots =
    grouping === null
      ? rows(null, total, across)
      : found.flatMap((one): readonly Slot[] => [
          { kind: 'heading', found: one },
          ...(folds.isFolded(one.key) ? [] : rows({ by: grouping, key: one.key }, one.fabrics, across)),
        ]);
  const listName = view === 'shelf' ? 'Fabrics as pictures' : 'Fabrics';
  return (
    <div ref={frame}>
      {grouping !== null && found.length > 1 && (
        <div className={styles['folds']}>
          <Button look="quiet" isSmall onClick={() => folds.foldAll(found.map(({ key }) => key))}>
            Fold all groups
          </Button>
          <Button look="quiet" isSmall onClick={() => folds.foldAll([])}>
            Open all groups
          </Button>
        </div>
      )}
      <VirtualList
        label={listName}
        items={slots}
        keyOf={(slot) => keyOf(slot, across)}
        estimate={view === 'shelf' ? CARD_HEIGHT : LINE_HEIGHT}
      >
        {(slot) => {
          if (slot.kind === 'heading' && grouping !== null) {
            const { key } = slot.found;
            return (
              <GroupHeading
                by={grouping}
                group={slot.found}
                isFolded={folds.isFolded(key)}
                onFold={() => folds.turn(key)}
              />
            );
          }
          return slot.kind === 'fabrics' && <Fabrics slot={slot} query={query} across={across} />;
        }}
      </VirtualList>
    </div>
  );
}

interface FabricsProps {
  readonly slot: Extract<Slot, { kind: 'fabrics' }>;
  readonly query: StashSearch;
  readonly across: number;
}

function Fabrics({ slot: { group, from, to }, query, across }: FabricsProps) {
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

function rows(group: StashGroup | null, count: number, across: number): readonly Slot[] {
  return Array.from({ length: Math.ceil(count / across) }, (_row, index) => ({
    kind: 'fabrics',
    group,
    from: index * across,
    to: Math.min(count, (index + 1) * across),
  }));
}

function keyOf(slot: Slot, across: number): string {
  return slot.kind === 'heading'
    ? `heading ${slot.found.key}`
    : `${String(across)} ${slot.group?.key ?? ''} ${String(slot.from)}`;
}

/** Which groups are folded; with another grouping none is. */
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
    turn: (key: string) =>
      setFolds({ grouping, keys: isFolded(key) ? keys.filter((one) => one !== key) : [...keys, key] }),
  };
}

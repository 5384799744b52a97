import { useWidth } from '#renderer/ui/use-width';
import { VirtualList } from '#renderer/ui/virtual-list';
import { FabricCard, FabricLine } from './fabric-row';
import type { StashQuery } from './stash-query';
import styles from './stash.module.css';

const LINE_HEIGHT = 88;
const CARD_WIDTH = 184;
const CARD_HEIGHT = 248;

interface FoundFabricsProps {
  readonly query: StashQuery;
  readonly total: number;
}

/** What was found, a line each. */
export function FabricList({ query, total }: FoundFabricsProps) {
  return (
    <VirtualList label="Fabrics" items={upTo(total)} keyOf={String} estimate={LINE_HEIGHT}>
      {(index) => <FabricLine query={query} index={index} />}
    </VirtualList>
  );
}

/** What was found as it looks: as many pictures side by side as the window is wide, of which only those in sight are drawn. */
export function FabricShelf({ query, total }: FoundFabricsProps) {
  const [frame, width] = useWidth<HTMLDivElement>(4 * CARD_WIDTH);
  const across = Math.max(1, Math.floor(width / CARD_WIDTH));
  return (
    <div ref={frame}>
      <VirtualList
        label="Fabrics as pictures"
        items={upTo(Math.ceil(total / across))}
        keyOf={(row) => `${String(across)} ${String(row)}`}
        estimate={CARD_HEIGHT}
      >
        {(row) => (
          <div
            className={styles['shelfRow']}
            style={{ gridTemplateColumns: `repeat(${String(across)}, minmax(0, 1fr))` }}
          >
            {upTo(Math.min(across, total - row * across)).map((column) => (
              <FabricCard key={column} query={query} index={row * across + column} />
            ))}
          </div>
        )}
      </VirtualList>
    </div>
  );
}

function upTo(count: number): readonly number[] {
  return Array.from({ length: count }, (_place, index) => index);
}

import { useLayoutEffect, useRef, useState } from 'react';
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
  const frame = useRef<HTMLDivElement>(null);
  const [across, setAcross] = useState(4);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() =>
      setAcross(Math.max(1, Math.floor(element.clientWidth / CARD_WIDTH))),
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
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

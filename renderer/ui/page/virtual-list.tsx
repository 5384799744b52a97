import { useVirtualizer } from '@tanstack/react-virtual';
import { type ReactNode, useCallback } from 'react';
import styles from './virtual-list.module.css';

interface VirtualListProps<Item> {
  readonly label: string;
  readonly items: readonly Item[];
  readonly keyOf: (item: Item) => string;
  /** Height of a row in CSS pixels before it has been measured. */
  readonly estimate: number;
  readonly children: (item: Item) => ReactNode;
}

/** A long list that draws only its visible rows. It scrolls with the page. */
export function VirtualList<Item>({ label, items, keyOf, estimate, children }: VirtualListProps<Item>) {
  // A new function would make the list lay out all rows again at each step of scrolling.
  const getItemKey = useCallback(
    (index: number) => {
      const item = items[index];
      return item === undefined ? index : keyOf(item);
    },
    [items, keyOf],
  );
  // The rule only warns about the React compiler, which is not used.
  // eslint-disable-next-line react-hooks/incompatible-library
  const virtualizer = useVirtualizer({
    count: items.length,
    getScrollElement: pageScroller,
    estimateSize: () => estimate,
    overscan: 8,
    getItemKey,
  });
  return (
    <ul aria-label={label} className={styles['list']} style={{ height: virtualizer.getTotalSize() }}>
      {virtualizer.getVirtualItems().map((row) => {
        const item = items[row.index];
        return (
          item !== undefined && (
            <li
              key={row.key}
              ref={virtualizer.measureElement}
              data-index={row.index}
              aria-setsize={items.length}
              aria-posinset={row.index + 1}
              className={styles['row']}
              style={{ transform: `translateY(${String(row.start)}px)` }}
            >
              {children(item)}
            </li>
          )
        );
      })}
    </ul>
  );
}

/** The scrolling part of the window, marked by the frame. */
function pageScroller(): Element | null {
  return document.querySelector('[data-page-scroller]');
}

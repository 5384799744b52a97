import { type ReactNode, useState } from 'react';
import type { Table } from '#core/calculators/explanation';
import { Button } from '../page/button';
import { FigureTable } from '../answers/figure-table';
import { useWidth } from '../base/use-width';
import styles from './chart.module.css';

interface ChartFigureProps {
  /** The drawn numbers as a table. A screen reader reads it in place of the drawing, and a button shows it. */
  readonly table: Table;
  /** Beside the title: the key of the drawing, or a choice. */
  readonly beside?: ReactNode;
  readonly children: (width: number) => ReactNode;
}

/** A drawing of numbers, and the same numbers as a table. */
export function ChartFigure({ table, beside, children }: ChartFigureProps) {
  const [isTableShown, setIsTableShown] = useState(false);
  const [frame, width] = useWidth<HTMLDivElement>(640);
  return (
    <figure className={styles['figure']} aria-label={table.title}>
      <div className={styles['head']}>
        <h2 className={styles['title']}>{table.title}</h2>
        <div className={styles['beside']}>{beside}</div>
        <Button
          look="quiet"
          isSmall
          aria-expanded={isTableShown}
          onClick={() => setIsTableShown(!isTableShown)}
        >
          {isTableShown ? 'Hide the numbers' : 'Show the numbers'}
        </Button>
      </div>
      <div ref={frame} aria-hidden>
        {children(width)}
      </div>
      <div className={isTableShown ? undefined : styles['onlyRead']}>
        <FigureTable table={table} />
      </div>
    </figure>
  );
}

/** The key of a drawing: what its colors mean. */
export function ChartKey({ names }: { readonly names: readonly string[] }) {
  return (
    <ul className={styles['key']} aria-hidden>
      {names.map((name, index) => (
        <li key={name}>
          <svg className={styles['mark']} viewBox="0 0 16 16">
            <rect x="1" y="1" width="14" height="14" className={styles[`series${String(index)}`]} />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}

import { scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import type { ReactNode } from 'react';
import { Typeset } from '../answers/typeset';
import styles from './chart.module.css';

export interface BarRow {
  readonly key: string;
  readonly name: ReactNode;
  /** What the bar is as long as; not negative. */
  readonly value: number;
  /** The numbers after the bar, in words. */
  readonly says: readonly string[];
}

interface BarTableProps {
  readonly title: string;
  /** The heads of the columns: of the names, then of what is said of each. */
  readonly columns: readonly string[];
  readonly rows: readonly BarRow[];
  readonly children?: ReactNode;
}

/** A table whose lines carry a bar as long as what they are ordered by. */
export function BarTable({ title, columns, rows, children }: BarTableProps) {
  const [name = '', ...heads] = columns;
  const along = scaleLinear({ domain: [0, Math.max(1, ...rows.map(({ value }) => value))], range: [0, 100] });
  return (
    <section className={styles['figure']} aria-label={title}>
      <h2 className={styles['title']}>{title}</h2>
      <table className={styles['bars']} aria-label={title}>
        <thead>
          <tr>
            <th scope="col">{name}</th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">
                <span className={styles['name']}>{row.name}</span>
                <svg className={styles['bar']} aria-hidden focusable="false">
                  <Bar
                    className={styles['series0'] ?? ''}
                    width={`${String(along(row.value))}%`}
                    height="100%"
                  />
                </svg>
              </th>
              {row.says.map((words, index) => (
                <td key={heads[index]}>
                  <Typeset text={words} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {children}
    </section>
  );
}

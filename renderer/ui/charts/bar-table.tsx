import { scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import type { ReactNode } from 'react';
import { Typeset } from '../answers/typeset';
import styles from './chart.module.css';

interface BarRow {
  readonly key: string;
  readonly name: ReactNode;
  /** The length of the bar; not negative. */
  readonly value: number;
  /** The text of the other columns. */
  readonly texts: readonly string[];
}

interface BarTableProps {
  readonly title: string;
  /** The heads of the columns, the one of the names first. */
  readonly columns: readonly string[];
  readonly rows: readonly BarRow[];
  readonly children?: ReactNode;
}

/** A table with a bar in each row for the value it is ordered by. */
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
              {row.texts.map((words, index) => (
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

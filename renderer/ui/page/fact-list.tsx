import type { ReactNode } from 'react';
import styles from './fact-list.module.css';

interface FactListProps {
  /** Name and value. Facts with an empty text are left out. */
  readonly facts: readonly (readonly [string, ReactNode])[];
  readonly label?: string;
  /** beside: next to each other, each below its name; lines: one per line, after its name. */
  readonly look?: 'beside' | 'lines';
}

/** Facts about one thing, each with its name. */
export function FactList({ facts, label, look = 'beside' }: FactListProps) {
  return (
    <dl className={styles[look]} aria-label={label}>
      {facts
        .filter(([, value]) => value !== '')
        .map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
    </dl>
  );
}

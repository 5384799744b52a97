import type { ReactNode } from 'react';
import styles from './fact-list.module.css';

interface FactListProps {
  /** Name and value; one whose value is an empty text is left out. */
  readonly facts: readonly (readonly [string, ReactNode])[];
  readonly label?: string;
  /** Beside each other, each under its name; or a line each, the name before it. */
  readonly look?: 'beside' | 'lines';
}

/** What is known of a thing, each with its name. */
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

import type { ReactNode } from 'react';
import styles from './empty-state.module.css';

interface EmptyStateProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly action?: ReactNode;
}

/** Shown in place of an empty list: what belongs here, and how to start. */
export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div className={styles['empty']}>
      <h2 className={styles['title']}>{title}</h2>
      <div>{children}</div>
      {action}
    </div>
  );
}

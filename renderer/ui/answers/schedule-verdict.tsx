import { classes } from '../base/classes';
import { Typeset } from './typeset';
import styles from './schedule-verdict.module.css';

interface ScheduleVerdictProps {
  /** Whether everything gets done on time. Empty to show nothing. */
  readonly words: string;
  readonly isLate: boolean;
  /** What would help. */
  readonly fixes: readonly string[];
  /** How sure that is. */
  readonly chances?: readonly string[];
}

/** Whether everything gets done on time, and what would help if not. A screen reader reads every change. */
export function ScheduleVerdict({ words, isLate, fixes, chances = [] }: ScheduleVerdictProps) {
  return (
    <section className={styles['verdict']} aria-live="polite" aria-label="On time or late">
      {words !== '' && (
        <p className={classes(styles['words'], isLate && styles['late'])}>
          <Typeset text={words} />
        </p>
      )}
      {chances.length > 0 && (
        <p className={styles['fixes']}>
          <Typeset text={chances.join(' ')} />
        </p>
      )}
      {isLate && fixes.length > 0 && (
        <p className={styles['fixes']}>
          <Typeset text={fixes.join(' ')} />
        </p>
      )}
    </section>
  );
}

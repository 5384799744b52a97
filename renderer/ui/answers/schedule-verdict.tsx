import { classes } from '../base/classes';
import { Typeset } from './typeset';
import styles from './schedule-verdict.module.css';

interface ScheduleVerdictProps {
  /** The one line: whether everything will be done in time. Empty for none. */
  readonly words: string;
  readonly isLate: boolean;
  /** What would mend it. */
  readonly fixes: readonly string[];
}

/** Whether everything will be done in time, and what would mend it; spoken when it changes. */
export function ScheduleVerdict({ words: says, isLate, fixes: mending }: ScheduleVerdictProps) {
  return (
    <section className={styles['verdict']} aria-live="polite" aria-label="In time or not">
      {says !== '' && (
        <p className={classes(styles['says'], isLate && styles['late'])}>
          <Typeset text={says} />
        </p>
      )}
      {isLate && mending.length > 0 && (
        <p className={styles['mending']}>
          <Typeset text={mending.join(' ')} />
        </p>
      )}
    </section>
  );
}

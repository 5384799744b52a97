import { classes } from '../base/classes';
import { Typeset } from './typeset';
import styles from './schedule-verdict.module.css';

interface PlanVerdictProps {
  /** The one line: whether everything will be done in time. Empty for none. */
  readonly says: string;
  readonly isLate: boolean;
  /** What would mend it. */
  readonly mending: readonly string[];
}

/** Whether everything will be done in time, and what would mend it; spoken when it changes. */
export function ScheduleVerdict({ says, isLate, mending }: PlanVerdictProps) {
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

import type { PlannedDates } from '#core/contract/dates';
import type { CalendarDate } from '#core/units/calendar-date';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { effectsOf, type ProjectRow } from './calendar-rows';
import { effectWords, moveWords } from './moved-days-words';
import styles from './words.module.css';

interface MovedDaysProps {
  readonly rows: readonly ProjectRow[];
  readonly saved: PlannedDates;
  readonly trial: PlannedDates;
  readonly on: CalendarDate;
  readonly onUndo: () => void;
}

const MOST_SHOWN = 5;

/** The moved days and what they would change, at the bottom of the window until they are saved. */
export function MovedDays({ rows, saved, trial, on, onUndo }: MovedDaysProps) {
  const { locale } = useDisplay();
  const effects = effectsOf(saved, trial);
  const nameOf = (id: string) => rows.find((row) => row.id === id)?.name ?? '';
  return (
    <section className={styles['trial']} aria-label="If that changes">
      <div className={styles['trialHead']}>
        <h2>If that changes</h2>
        <p>{rows.flatMap((row) => moveWords(row, { locale, on })).join('; ')}</p>
        <Button isSmall onClick={onUndo}>
          Cancel
        </Button>
      </div>
      <ul className={styles['effects']} aria-live="polite">
        {effects.length === 0 && <li>No finish dates change.</li>}
        {effects.slice(0, MOST_SHOWN).map((effect) => (
          <li key={effect.id} className={classes(effect.lateAfter > 0 && styles['late'])}>
            {effectWords(effect, nameOf(effect.id), { locale, on })}
          </li>
        ))}
        {effects.length > MOST_SHOWN && <li>And {String(effects.length - MOST_SHOWN)} more.</li>}
      </ul>
    </section>
  );
}

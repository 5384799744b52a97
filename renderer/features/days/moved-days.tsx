import type { PlannedDates } from '#core/contract/dates';
import type { CalendarDate } from '#core/units/calendar-date';
import { daysWords, weekdayWords } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { type Effect, effectsOf, type ProjectRow } from './view-model';
import styles from './words.module.css';

interface SupposedProps {
  readonly rows: readonly ProjectRow[];
  readonly kept: PlannedDates;
  readonly supposed: PlannedDates;
  readonly on: CalendarDate;
  readonly onPutBack: () => void;
}

const MOST_SHOWN = 5;

/** What is supposed and what it changes for every piece, at the foot of the window while it is only supposed. */
export function MovedDays({ rows, kept, supposed, on, onPutBack }: SupposedProps) {
  const { locale } = useDisplay();
  const day = (date: CalendarDate | null) => (date === null ? 'never' : weekdayWords(date, locale, on));
  const moved = rows.flatMap(({ name, due, back }) => [
    ...(due !== null && due.on !== due.keptOn
      ? [`${name} due ${day(due.on)} in place of ${day(due.keptOn)}`]
      : []),
    ...(back !== null && back.on !== back.keptOn
      ? [`${name} back ${day(back.on)} in place of ${day(back.keptOn)}`]
      : []),
  ]);
  const effects = effectsOf(kept, supposed);
  const nameOf = (id: string) => rows.find((row) => row.id === id)?.name ?? '';
  return (
    <section className={styles['supposed']} aria-label="Only supposed">
      <div className={styles['supposedHead']}>
        <h2>What if</h2>
        <p>{moved.join('; ')}</p>
        <Button isSmall onClick={onPutBack}>
          Put back
        </Button>
      </div>
      <ul className={styles['effects']} aria-live="polite">
        {effects.length === 0 && <li>No piece is done on another day.</li>}
        {effects.slice(0, MOST_SHOWN).map((effect) => (
          <li key={effect.id} className={classes(effect.lateAfter > 0 && styles['late'])}>
            {effectWords(effect, nameOf(effect.id), day)}
          </li>
        ))}
        {effects.length > MOST_SHOWN && (
          <li>And {String(effects.length - MOST_SHOWN)} more on another day.</li>
        )}
      </ul>
    </section>
  );
}

function effectWords(
  { finishedBefore, finishedAfter, lateBefore, lateAfter }: Effect,
  name: string,
  day: (date: CalendarDate | null) => string,
): string {
  const done =
    finishedBefore === finishedAfter
      ? `still done ${day(finishedAfter)}`
      : `done ${day(finishedAfter)} in place of ${day(finishedBefore)}`;
  const late = lateAfter > 0 ? `, ${daysWords(lateAfter)} late` : lateBefore > 0 ? ', now in time' : '';
  return `${name}: ${done}${late}`;
}

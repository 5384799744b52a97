import type { CalendarDate } from '#core/units/calendar-date';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from './words.module.css';

/** The days as a file for whatever calendar the maker looks at. */
export function OtherCalendars({ on }: { readonly on: CalendarDate }) {
  const saving = useWrite('shell:save-calendar');
  return (
    <section className={styles['others']} aria-label="For your other calendars">
      <Button isSmall disabled={saving.isWriting} onClick={() => void saving.write({ on })}>
        Save a calendar file
      </Button>
      <p className={styles['quiet']}>
        What is due, the last days to send out and the days promised back, each with a reminder the morning
        before. A calendar that reads a later file again moves what it has.
      </p>
      <ProblemNotice problem={saving.problem} />
    </section>
  );
}

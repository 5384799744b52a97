import type { CalendarDate } from '#core/units/calendar-date';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './words.module.css';

/** Saves the days as a file for another calendar. */
export function OtherCalendars({ on }: { readonly on: CalendarDate }) {
  const saving = useWrite('shell:save-calendar');
  return (
    <section className={styles['others']} aria-label="For your other calendars">
      <Button isSmall disabled={saving.isWriting} onClick={() => void saving.write({ on })}>
        Save a calendar file
      </Button>
      <p className={layout['quiet']}>
        Due dates, last days to mail, and days projects should come back, each with a reminder the morning
        before. Import a newer file later to update them.
      </p>
      <ProblemNotice problem={saving.problem} />
    </section>
  );
}

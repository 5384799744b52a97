import type { Trip } from '#core/contract/projects';
import { useWrite } from '#renderer/bridge/query';
import { dateWords, today } from '#renderer/text/dates';
import { TRIP_EVENT_WORDS } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import styles from '../stage.module.css';

/** The updates of a trip, in order of their days. */
export function TripUpdates({ trip }: { readonly trip: Trip }) {
  const { locale } = useDisplay();
  const deleting = useWrite('trip:delete-event');
  const on = today();
  if (trip.events.length === 0) return null;
  return (
    <>
      <ol className={styles['days']} aria-label={`Updates from ${trip.withWhom}`}>
        {trip.events.map((event) => (
          <li key={event.id} className={styles['line']}>
            <span>
              <span className={layout['quiet']}>{dateWords(event.on, locale, on)}</span>{' '}
              {TRIP_EVENT_WORDS[event.kind]}
              {event.note !== '' && <>: {event.note}</>}
            </span>
            <span className={styles['onlyNear']}>
              <Button
                look="quiet"
                isSmall
                aria-label={`Delete “${TRIP_EVENT_WORDS[event.kind]}” on ${dateWords(event.on, locale, on)}`}
                onClick={() => void deleting.write({ tripEventId: event.id })}
              >
                Delete
              </Button>
            </span>
          </li>
        ))}
      </ol>
      <ProblemNotice problem={deleting.problem} />
    </>
  );
}

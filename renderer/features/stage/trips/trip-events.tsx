import type { Trip } from '#core/contract/projects';
import { useWrite } from '#renderer/bridge/query';
import { dateWords, today } from '#renderer/text/dates';
import { TRIP_EVENT_WORDS } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from '../stage.module.css';

/** What was heard of a trip, by its days. */
export function TripWords({ trip }: { readonly trip: Trip }) {
  const { locale } = useDisplay();
  const untelling = useWrite('trip:untell');
  const on = today();
  if (trip.events.length === 0) return null;
  return (
    <>
      <ol className={styles['days']} aria-label={`Heard from ${trip.withWhom}`}>
        {trip.events.map((event) => (
          <li key={event.id} className={styles['line']}>
            <span>
              <span className={styles['quiet']}>{dateWords(event.on, locale, on)}</span>{' '}
              {TRIP_EVENT_WORDS[event.kind]}
              {event.note !== '' && <>: {event.note}</>}
            </span>
            <span className={styles['onlyNear']}>
              <Button
                look="quiet"
                isSmall
                aria-label={`Strike “${TRIP_EVENT_WORDS[event.kind]}” of ${dateWords(event.on, locale, on)}`}
                onClick={() => void untelling.write({ tripEventId: event.id })}
              >
                Strike
              </Button>
            </span>
          </li>
        ))}
      </ol>
      <ProblemNotice problem={untelling.problem} />
    </>
  );
}

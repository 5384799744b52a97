import { useState } from 'react';
import { Link } from 'react-router';
import type { ProjectGlance, Trip } from '#core/contract/projects';
import { askAfter, type AskAfter as Reason } from '#core/domain/trip';
import type { CalendarDate } from '#core/units/calendar-date';
import { useWrite } from '#renderer/bridge/query';
import { askAfterWords, lastWordWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { TripUpdateDialog } from '#renderer/shared/trip-update-dialog';
import styles from './bench.module.css';

interface CheckInProps {
  readonly glances: readonly ProjectGlance[];
  readonly silentDays: number;
  readonly on: CalendarDate;
}

interface Asked {
  readonly trip: Trip;
  readonly pieces: readonly string[];
  readonly reason: Reason;
}

/** Pieces that are overdue or of which nothing was heard for long, one line a package: whom to ask, and where to write the answer. */
export function CheckIn({ glances, silentDays, on }: CheckInProps) {
  const [told, setTold] = useState<Asked | null>(null);
  const telling = useWrite('trip:add-event');
  const { locale } = useDisplay();
  const asked = packagesToCheckOn(glances, silentDays, on);
  if (asked.length === 0) return null;
  return (
    <section className={styles['group']} aria-labelledby="ask-after">
      <h2 id="ask-after" className={styles['groupName']}>
        Ask after
      </h2>
      <ul className={styles['asks']}>
        {asked.map((one) => (
          <li key={one.trip.packageId} className={styles['ask']}>
            <div className={styles['cardWords']}>
              <p>
                <Link to={`/sent-out/${one.trip.contactId}`}>{one.trip.withWhom}</Link> has {one.pieces.join(', ')}
              </p>
              <p className={styles['alert']}>{sentence(askAfterWords(one.reason))}</p>
              <p className={styles['line']}>Last: {lastWordWords(one.trip, locale, on)}</p>
            </div>
            <Button isSmall onClick={() => setTold(one)}>
              Write down what is heard
            </Button>
          </li>
        ))}
      </ul>
      {told !== null && (
        <TripUpdateDialog
          trip={told.trip}
          startsWith="heard"
          others={told.pieces.length - 1}
          telling={telling}
          onClose={() => setTold(null)}
        />
      )}
    </section>
  );
}

/** One entry a package, the one that waits longest first. */
export function packagesToCheckOn(
  glances: readonly ProjectGlance[],
  silentDays: number,
  on: CalendarDate,
): readonly Asked[] {
  const packages = new Map<string, Asked>();
  for (const { project, stages, trips } of glances) {
    for (const trip of trips) {
      const isOut = stages.some(({ id, state }) => id === trip.stageId && state === 'out');
      const reason = isOut ? askAfter(trip, on, silentDays) : null;
      if (reason === null) continue;
      const before = packages.get(trip.packageId);
      if (before === undefined) packages.set(trip.packageId, { trip, pieces: [project.name], reason });
      else packages.set(trip.packageId, { ...before, pieces: [...before.pieces, project.name] });
    }
  }
  return [...packages.values()].toSorted((one, other) => other.reason.days - one.reason.days);
}

function sentence(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
}

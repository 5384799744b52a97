import { useState } from 'react';
import { Link } from 'react-router';
import type { ProjectGlance, Trip } from '#core/contract/projects';
import { reasonToCheckIn, type CheckInReason } from '#core/domain/trip';
import type { CalendarDate } from '#core/units/calendar-date';
import { checkInWords, lastUpdateWords } from '#renderer/text/trip-words';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { TripUpdateDialog } from '#renderer/shared/trip-update-dialog';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './bench.module.css';

interface CheckInProps {
  readonly glances: readonly ProjectGlance[];
  readonly silentDays: number;
  readonly on: CalendarDate;
}

interface PackageToCheck {
  readonly trip: Trip;
  readonly projects: readonly string[];
  readonly reason: CheckInReason;
}

/** Packages that are overdue, or without news for long: who to check in with, and where to add the answer. */
export function CheckIn({ glances, silentDays, on }: CheckInProps) {
  const [updated, setUpdated] = useState<PackageToCheck | null>(null);
  const { locale } = useDisplay();
  const packages = packagesToCheckOn(glances, silentDays, on);
  if (packages.length === 0) return null;
  return (
    <section className={layout['stack']} aria-labelledby="check-in">
      <h2 id="check-in" className={styles['groupName']}>
        Check in with
      </h2>
      <ul className={styles['asks']}>
        {packages.map((one) => (
          <li key={one.trip.packageId} className={styles['ask']}>
            <div className={styles['cardWords']}>
              <p>
                <Link to={`/sent-out/${one.trip.contactId}`}>{one.trip.withWhom}</Link> has{' '}
                {one.projects.join(', ')}
              </p>
              <p className={layout['alert']}>{capitalized(checkInWords(one.reason))}</p>
              <p className={styles['line']}>Last: {lastUpdateWords(one.trip, locale, on)}</p>
            </div>
            <span className={layout['row']}>
              <ButtonLink isSmall to={`/projects/${one.trip.projectId}/stages/${one.trip.stageId}?back`}>
                It is back
              </ButtonLink>
              <Button isSmall onClick={() => setUpdated(one)}>
                Add an update
              </Button>
            </span>
          </li>
        ))}
      </ul>
      {updated !== null && (
        <TripUpdateDialog
          trip={updated.trip}
          startsWith="heard"
          others={updated.projects.length - 1}
          onClose={() => setUpdated(null)}
        />
      )}
    </section>
  );
}

/** One entry for each package, the longest wait first. */
export function packagesToCheckOn(
  glances: readonly ProjectGlance[],
  silentDays: number,
  on: CalendarDate,
): readonly PackageToCheck[] {
  const packages = new Map<string, PackageToCheck>();
  for (const { project, stages, trips } of glances) {
    for (const trip of trips) {
      const isOut = stages.some(({ id, state }) => id === trip.stageId && state === 'out');
      const reason = isOut ? reasonToCheckIn(trip, on, silentDays) : null;
      if (reason === null) continue;
      const before = packages.get(trip.packageId);
      if (before === undefined) packages.set(trip.packageId, { trip, projects: [project.name], reason });
      else packages.set(trip.packageId, { ...before, projects: [...before.projects, project.name] });
    }
  }
  return [...packages.values()].toSorted((one, other) => other.reason.days - one.reason.days);
}

function capitalized(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
}

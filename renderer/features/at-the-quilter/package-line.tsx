import { useState } from 'react';
import { Link } from 'react-router';
import { TripUpdateDialog } from '#renderer/shared/trip-update-dialog';
import { dateWords, farWords, today } from '#renderer/text/dates';
import { checkInWords, lastUpdateWords } from '#renderer/text/trip-words';
import { useDisplay } from '#renderer/ui/base/display';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './at-the-quilter.module.css';
import type { PackageAway } from './packages-away';

/** One package at a quilter: its projects, the contact, the promised date, and the last update. */
export function PackageLine({ sentPackage }: { readonly sentPackage: PackageAway }) {
  const { contact, trips, first, ask } = sentPackage;
  const { locale } = useDisplay();
  const [isAdding, setIsAdding] = useState(false);
  const on = today();
  const promised =
    first.promisedOn === null
      ? 'no date promised'
      : `promised ${dateWords(first.promisedOn, locale, on)} (${farWords(first.promisedOn, on)})`;
  const last = lastUpdateWords(first, locale, on);
  return (
    <li className={styles['line']}>
      <div className={styles['words']}>
        <span>
          {trips.map((trip, index) => (
            <span key={trip.id}>
              {index > 0 && ', '}
              <Link to={`/projects/${trip.projectId}/stages/${trip.stageId}`} className={layout['name']}>
                {trip.projectName}
              </Link>
            </span>
          ))}
        </span>
        <span className={layout['quiet']}>
          with <Link to={`/sent-out/${contact.id}`}>{contact.details.name}</Link>, {promised}
        </span>
      </div>
      <div className={styles['words']}>
        {ask !== null && <span className={layout['alert']}>Check in: {checkInWords(ask)}</span>}
        {last !== null && <span className={layout['quiet']}>Last: {last}</span>}
      </div>
      <div className={layout['row']}>
        {first.stageState === 'out' && (
          <ButtonLink isSmall to={`/projects/${first.projectId}/stages/${first.stageId}?back`}>
            It is back
          </ButtonLink>
        )}
        <Button isSmall onClick={() => setIsAdding(true)}>
          Add an update
        </Button>
      </div>
      {isAdding && (
        <TripUpdateDialog
          trip={first}
          startsWith="heard"
          others={trips.length - 1}
          onClose={() => setIsAdding(false)}
        />
      )}
    </li>
  );
}

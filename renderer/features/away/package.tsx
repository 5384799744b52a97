import { useState } from 'react';
import { Link } from 'react-router';
import { useWrite } from '#renderer/bridge/query';
import { dateWords, farWords, today } from '#renderer/text/dates';
import { askAfterWords, lastWordWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { TellTripDialog } from '#renderer/ui/workshop/tell-trip-dialog';
import type { PackageAway } from './view-model';
import styles from './away.module.css';

/** One package that is away: what is in it, with whom, until when, and what was heard last. */
export function Package({ sentPackage }: { readonly sentPackage: PackageAway }) {
  const { contact, trips, first, ask } = sentPackage;
  const { locale } = useDisplay();
  const [isTelling, setIsTelling] = useState(false);
  const telling = useWrite('trip:tell');
  const on = today();
  const promised =
    first.promisedOn === null
      ? 'no day promised'
      : `promised ${dateWords(first.promisedOn, locale, on)} (${farWords(first.promisedOn, on)})`;
  const last = lastWordWords(first, locale, on);
  return (
    <li className={styles['line']}>
      <div className={styles['words']}>
        <span>
          {trips.map((trip, index) => (
            <span key={trip.id}>
              {index > 0 && ', '}
              <Link to={`/projects/${trip.projectId}/stages/${trip.stageId}`} className={styles['name']}>
                {trip.projectName}
              </Link>
            </span>
          ))}
        </span>
        <span className={styles['quiet']}>
          with <Link to={`/out/${contact.id}`}>{contact.details.name}</Link>, {promised}
        </span>
      </div>
      <div className={styles['words']}>
        {ask !== null && <span className={styles['alert']}>Ask after it: {askAfterWords(ask)}</span>}
        {last !== null && <span className={styles['quiet']}>Last: {last}</span>}
      </div>
      <div>
        <Button isSmall onClick={() => setIsTelling(true)}>
          Write down what is heard
        </Button>
      </div>
      {isTelling && (
        <TellTripDialog
          trip={first}
          startsWith="heard"
          others={trips.length - 1}
          telling={telling}
          onClose={() => setIsTelling(false)}
        />
      )}
    </li>
  );
}

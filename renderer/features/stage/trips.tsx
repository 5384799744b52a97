import { useState } from 'react';
import type { Trip } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import type { TripDetails } from '#core/domain/trip';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { dateWords, lateWords, today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/button';
import { type Display, useDisplay } from '#renderer/ui/display';
import { tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';
import styles from './stage.module.css';

interface TripsProps {
  readonly stage: Stage;
  readonly trips: readonly Trip[];
}

/** The journeys of a stage out of the house: with whom, from when to when, what was asked for and what it cost. */
export function Trips({ stage, trips }: TripsProps) {
  const [changed, setChanged] = useState<Trip | null>(null);
  if (stage.kind !== 'longarm' && trips.length === 0) return null;
  return (
    <section className={styles['part']} aria-label="Trips out">
      <h3>Trips out</h3>
      {trips.length === 0 && <p className={styles['quiet']}>It has not left the house yet.</p>}
      <ul className={styles['lines']}>
        {trips.map((trip) => (
          <TripLine key={trip.id} trip={trip} onChange={() => setChanged(trip)} />
        ))}
      </ul>
      {changed !== null && <ChangeTrip trip={changed} onClose={() => setChanged(null)} />}
    </section>
  );
}

function TripLine({ trip, onChange }: { readonly trip: Trip; readonly onChange: () => void }) {
  const display = useDisplay();
  const removing = useWrite('trip:remove');
  return (
    <li className={styles['part']}>
      <div className={styles['partHead']}>
        <strong>{trip.withWhom}</strong>
        <span className={styles['row']}>
          <Button look="quiet" isSmall onClick={onChange}>
            Change
          </Button>
          <Button look="quiet" isSmall onClick={() => void removing.write({ tripId: trip.id })}>
            Remove
          </Button>
        </span>
      </div>
      <p>{tripDays(trip, display)}</p>
      {trip.askedFor !== '' && <p className={styles['quiet']}>Asked for: {trip.askedFor}</p>}
      {trip.sentAlong !== '' && <p className={styles['quiet']}>Sent along: {trip.sentAlong}</p>}
      {trip.trackingNumber !== '' && <p className={styles['quiet']}>Tracking number {trip.trackingNumber}</p>}
      {trip.priceMinor !== null && (
        <p>{formatMoney(moneyFromMinor(trip.priceMinor, display.currency), display.locale)}</p>
      )}
    </li>
  );
}

/** `Sent 3 Oct, promised 10 Nov: 5 days late`. */
function tripDays(trip: Trip, { locale }: Display): string {
  const on = today();
  const sent = trip.sentOn === null ? 'Sent' : `Sent ${dateWords(trip.sentOn, locale, on)}`;
  if (trip.backOn !== null) return `${sent}, back ${dateWords(trip.backOn, locale, on)}`;
  if (trip.promisedOn === null) return `${sent}, no day promised`;
  const late = lateWords(trip.promisedOn, on);
  return `${sent}, promised ${dateWords(trip.promisedOn, locale, on)}${late === '' ? '' : `: ${late} late`}`;
}

function ChangeTrip({ trip, onClose }: { readonly trip: Trip; readonly onClose: () => void }) {
  const [details, setDetails] = useState<TripDetails>(() => tripDetailsOf(trip));
  const changing = useWrite('trip:change');
  const change = async () => {
    const answer = await changing.write({ tripId: trip.id, details });
    if (answer.ok) onClose();
  };
  return (
    <TripForm
      title="This trip"
      verb="Keep it so"
      trip={details}
      withBack
      isBusy={changing.isWriting}
      problem={changing.problem}
      onChange={setDetails}
      onDone={() => void change()}
      onClose={onClose}
    />
  );
}

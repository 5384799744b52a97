import { useState } from 'react';
import type { StagePhoto, Trip } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import type { TripDetails } from '#core/domain/trip';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { TripCard } from './trip-card';
import { tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';
import styles from '../stage.module.css';

interface TripsProps {
  readonly stage: Stage;
  readonly trips: readonly Trip[];
  readonly photos: readonly StagePhoto[];
}

/** The journeys of a stage out of the house: with whom, from when to when, what went along, what was heard and what it cost. */
export function Trips({ stage, trips, photos }: TripsProps) {
  const [changed, setChanged] = useState<Trip | null>(null);
  if (stage.kind !== 'longarm' && trips.length === 0) return null;
  return (
    <section className={styles['part']} aria-label="Trips out">
      <h3>Trips out</h3>
      {trips.length === 0 && <p className={styles['quiet']}>It has not left the house yet.</p>}
      <ul className={styles['lines']}>
        {trips.map((trip) => (
          <TripCard
            key={trip.id}
            stage={stage}
            trip={trip}
            photos={photos.filter(({ tripId }) => tripId === trip.id)}
            onChange={() => setChanged(trip)}
          />
        ))}
      </ul>
      {changed !== null && <ChangeTrip trip={changed} onClose={() => setChanged(null)} />}
    </section>
  );
}

function ChangeTrip({ trip, onClose }: { readonly trip: Trip; readonly onClose: () => void }) {
  const { settings } = useWorkshop();
  const contacts = useRead('contact:list', {}).value ?? [];
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
      contacts={contacts}
      usualDays={settings.turnaroundDays}
      withBack
      isBusy={changing.isWriting}
      problem={changing.problem}
      onChange={setDetails}
      onDone={() => void change()}
      onClose={onClose}
    />
  );
}

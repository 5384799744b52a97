import { stageKindRecord } from '#core/domain/stage-kinds';
import { useState } from 'react';
import type { StagePhoto, Trip } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import type { TripDetails } from '#core/domain/trip';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { useDialogSave } from '#renderer/ui/page/dialog-form';
import { TripCard } from './trip-card';
import { tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';
import layout from '#renderer/ui/page/layout.module.css';
import styles from '../stage.module.css';

interface TripsProps {
  readonly stage: Stage;
  readonly trips: readonly Trip[];
  readonly photos: readonly StagePhoto[];
}

/** The trips of a stage: who has the project, its days, what is in the package, the updates and the price. */
export function Trips({ stage, trips, photos }: TripsProps) {
  const [changed, setChanged] = useState<Trip | null>(null);
  if (!stageKindRecord(stage.kind).isSentOut && trips.length === 0) return null;
  return (
    <section className={layout['part']} aria-label="Trips to the quilter">
      <h3>Trips to the quilter</h3>
      {trips.length === 0 && <p className={layout['quiet']}>It hasn’t been sent yet.</p>}
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
  const draft = useFormDraft(`trip ${trip.id}`);
  const [details, setDetails] = useDraftValue<TripDetails>(draft, 'details', () => tripDetailsOf(trip));
  const saving = useDialogSave(useWrite('trip:change'), onClose, draft);
  return (
    <TripForm
      draft={draft}
      title="Change this trip"
      trip={details}
      contacts={contacts}
      usualDays={settings.turnaroundDays}
      withBack
      saving={saving}
      onChange={setDetails}
      onSave={() => saving.save({ tripId: trip.id, details })}
      onClose={onClose}
    />
  );
}

import { useState } from 'react';
import type { Trip } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import type { TripDetails } from '#core/domain/trip';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';

interface BackDialogProps {
  readonly stage: Stage;
  readonly trips: readonly Trip[];
  readonly onClose: () => void;
}

/** A piece that has come back: on what day and for what price. Without a trip on record only the stage moves on. */
export function BackDialog({ stage, trips, onClose }: BackDialogProps) {
  const trip = trips.findLast((one) => one.stageId === stage.id && one.backOn === null) ?? null;
  const [details, setDetails] = useState<TripDetails>(() =>
    trip === null ? { ...NO_TRIP, backOn: today() } : { ...tripDetailsOf(trip), backOn: today() },
  );
  const receiving = useWrite('trip:receive');
  const receive = async () => {
    const received = await receiving.write({ stageId: stage.id, tripId: trip?.id ?? null, details });
    if (received.ok) onClose();
  };
  return (
    <TripForm
      title="It is back"
      verb="It is back"
      trip={details}
      withBack
      isBusy={receiving.isWriting}
      problem={receiving.problem}
      onChange={setDetails}
      onDone={() => void receive()}
      onClose={onClose}
    />
  );
}

const NO_TRIP: TripDetails = {
  withWhom: '',
  sentOn: null,
  promisedOn: null,
  backOn: null,
  trackingNumber: '',
  sentAlong: '',
  askedFor: '',
  priceMinor: null,
};

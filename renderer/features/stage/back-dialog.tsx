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
  const adding = useWrite('trip:add');
  const changing = useWrite('trip:change');
  const moving = useWrite('stage:move');
  const receive = async () => {
    const kept =
      trip === null
        ? await adding.write({ stageId: stage.id, details })
        : await changing.write({ tripId: trip.id, details });
    if (!kept.ok) return;
    const moved = await moving.write({ stageId: stage.id, to: 'done' });
    if (moved.ok) onClose();
  };
  return (
    <TripForm
      title="It is back"
      verb="It is back"
      trip={details}
      withBack
      isBusy={adding.isWriting || changing.isWriting || moving.isWriting}
      problem={adding.problem ?? changing.problem ?? moving.problem}
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

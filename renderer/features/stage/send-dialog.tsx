import { useState } from 'react';
import type { ProjectSpread } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import type { TripDetails } from '#core/domain/trip';
import { habitsOfProject } from '#core/domain/workshop';
import { addDays } from '#core/units/calendar-date';
import { useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { TripForm } from './trip-form';

interface SendDialogProps {
  readonly stage: Stage;
  readonly spread: ProjectSpread;
  readonly onClose: () => void;
}

/** Sends a piece out: to whom, and until when. The promised day starts from the workshop's usual turn-around. */
export function SendDialog({ stage, spread, onClose }: SendDialogProps) {
  const { habits } = useWorkshop();
  const { turnaroundDays } = habitsOfProject(habits, spread.project.habitChanges);
  const [trip, setTrip] = useState<TripDetails>(() => ({
    withWhom: '',
    sentOn: today(),
    promisedOn: addDays(today(), turnaroundDays),
    backOn: null,
    trackingNumber: '',
    sentAlong: 'Top, backing, batting',
    askedFor: '',
    priceMinor: null,
  }));
  const sending = useWrite('trip:send');
  const send = async () => {
    const sent = await sending.write({ stageId: stage.id, details: trip });
    if (sent.ok) onClose();
  };
  return (
    <TripForm
      title="Send it out"
      verb="Send it out"
      trip={trip}
      withBack={false}
      isBusy={sending.isWriting}
      problem={sending.problem}
      onChange={setTrip}
      onDone={() => void send()}
      onClose={onClose}
    />
  );
}

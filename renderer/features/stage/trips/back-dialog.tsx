import type { Trip } from '#core/contract/projects';
import type { TripId } from '#core/domain/ids';
import type { Stage } from '#core/domain/stage';
import { type TripDetails, tripWith } from '#core/domain/trip';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { useDialogSave } from '#renderer/ui/page/dialog-form';
import { othersInPackage } from './package';
import { tripDetailsOf } from './trip-details';
import { TripForm } from './trip-form';
import layout from '#renderer/ui/page/layout.module.css';

interface BackDialogProps {
  readonly stage: Stage;
  readonly trips: readonly Trip[];
  readonly onClose: () => void;
}

/** Receives a project: the day, the price, and which others came back with it. Without a recorded trip only the stage moves on. */
export function BackDialog({ stage, trips, onClose }: BackDialogProps) {
  const trip = trips.findLast((one) => one.stageId === stage.id && one.backOn === null) ?? null;
  const { settings } = useWorkshop();
  const contacts = useRead('contact:list', {}).value ?? [];
  const others = trip === null ? [] : othersInPackage(contacts, trip);
  const draft = useFormDraft(`back ${trip?.id ?? stage.id}`);
  const [stayed, setStayed] = useDraftValue<readonly TripId[]>(draft, 'stayed', []);
  const [details, setDetails] = useDraftValue<TripDetails>(draft, 'details', () =>
    trip === null
      ? { ...tripWith(''), backOn: today() }
      : { ...tripDetailsOf(trip), backOn: today(), priceMinor: trip.priceMinor ?? trip.priceAskedMinor },
  );
  const saving = useDialogSave(useWrite('trip:receive'), onClose, draft);
  const receive = () => {
    const alsoTripIds = others.map(({ id }) => id).filter((id) => !stayed.includes(id));
    saving.save({ stageId: stage.id, tripId: trip?.id ?? null, details, alsoTripIds });
  };
  return (
    <TripForm
      draft={draft}
      title="It is back"
      trip={details}
      contacts={contacts}
      usualDays={settings.turnaroundDays}
      withBack
      saving={saving}
      onChange={setDetails}
      onSave={receive}
      onClose={onClose}
    >
      {others.length > 0 && (
        <fieldset className={layout['part']}>
          <legend className={layout['legend']}>Came back in the same package</legend>
          {others.map(({ id, projectName }) => (
            <Checkbox
              key={id}
              label={projectName}
              isChecked={!stayed.includes(id)}
              help={stayed.includes(id) ? 'Still away' : undefined}
              onChange={(isBack) => setStayed(isBack ? stayed.filter((one) => one !== id) : [...stayed, id])}
            />
          ))}
        </fieldset>
      )}
    </TripForm>
  );
}

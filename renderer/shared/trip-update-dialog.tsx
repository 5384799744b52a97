import type { Trip } from '#core/contract/projects';
import { tripEventKindSchema, type TripEventKind } from '#core/domain/trip';
import type { CalendarDate } from '#core/units/calendar-date';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { TRIP_EVENT_WORDS } from '#renderer/text/trip-words';
import { Checkbox } from '../ui/fields/checkbox';
import { Choice } from '../ui/fields/choice';
import { DateField } from '../ui/fields/date-field';
import { TextField } from '../ui/fields/text-field';
import { DialogForm, useDialogSave } from '../ui/page/dialog-form';
import layout from '../ui/page/layout.module.css';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';

interface TripUpdateDialogProps {
  readonly trip: Trip;
  /** The most likely kind of update, chosen at first. */
  readonly startsWith: TripEventKind;
  /** How many other projects in the package are still away. */
  readonly others: number;
  readonly onClose: () => void;
}

/** Adds an update to a trip: what happened, on which day, and what the quilter said. */
export function TripUpdateDialog({ trip, startsWith, others, onClose }: TripUpdateDialogProps) {
  const draft = useFormDraft(`trip-update ${trip.id}`);
  const [kind, setKind] = useDraftValue(draft, 'kind', startsWith);
  const [on, setOn] = useDraftValue<CalendarDate | null>(draft, 'on', today);
  const [note, setNote] = useDraftValue(draft, 'note', '');
  const [ofWholePackage, setOfWholePackage] = useDraftValue(draft, 'ofWholePackage', others > 0);
  const saving = useDialogSave(useWrite('trip:add-event'), onClose, draft);
  return (
    <DialogForm
      draft={draft}
      title={`Update from ${trip.withWhom}`}
      saving={saving}
      canSave={on !== null}
      onSave={() => {
        if (on !== null) saving.save({ tripId: trip.id, kind, on, note, ofWholePackage });
      }}
      onClose={onClose}
      className={layout['stack']}
    >
      <Choice
        label="What happened"
        value={kind}
        options={tripEventKindSchema.options.map((value) => ({ value, words: TRIP_EVENT_WORDS[value] }))}
        onChange={setKind}
      />
      <DateField label="Date" value={on} onChange={setOn} />
      <TextField label="What they said" value={note} maximum={500} onChange={setNote} isOptional isLong />
      {others > 0 && (
        <Checkbox
          label={`Also for the ${others === 1 ? 'other project' : `${String(others)} other projects`} in the package`}
          isChecked={ofWholePackage}
          onChange={setOfWholePackage}
        />
      )}
    </DialogForm>
  );
}

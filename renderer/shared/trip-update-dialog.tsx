import { useState } from 'react';
import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Trip } from '#core/contract/projects';
import { tripEventKindSchema, type TripEventKind } from '#core/domain/trip';
import { today } from '#renderer/text/dates';
import { TRIP_EVENT_WORDS } from '#renderer/text/trip-words';
import { Button } from '../ui/page/button';
import { Checkbox } from '../ui/fields/checkbox';
import { Choice } from '../ui/fields/choice';
import { DateField } from '../ui/fields/date-field';
import { Dialog } from '../ui/page/dialog';
import { Form } from '../ui/fields/form';
import { ProblemNotice } from '../ui/page/problem-notice';
import { TextField } from '../ui/fields/text-field';
import styles from './trip-update-dialog.module.css';

interface TripUpdateDialogProps {
  readonly trip: Trip;
  /** What is most likely to be written down: another may be chosen. */
  readonly startsWith: TripEventKind;
  /** How many other pieces in the package are still away. */
  readonly others: number;
  readonly telling: {
    readonly write: (input: ChannelInput<'trip:add-event'>) => Promise<{ readonly ok: boolean }>;
    readonly isWriting: boolean;
    readonly problem: Problem | null;
  };
  readonly onClose: () => void;
}

/** Writes down what was heard of a piece that is away: what, on which day, and in which words. */
export function TripUpdateDialog({ trip, startsWith, others, telling, onClose }: TripUpdateDialogProps) {
  const [kind, setKind] = useState(startsWith);
  const [on, setOn] = useState<ReturnType<typeof today> | null>(today);
  const [note, setNote] = useState('');
  const [ofWholePackage, setOfWholePackage] = useState(others > 0);
  const keep = async () => {
    if (on === null) return;
    const told = await telling.write({ tripId: trip.id, kind, on, note, ofWholePackage });
    if (told.ok) onClose();
  };
  return (
    <Dialog
      title={`What is heard from ${trip.withWhom}`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not now</Button>
          <Button look="main" type="submit" form="tell-trip" disabled={telling.isWriting || on === null}>
            Write it down
          </Button>
        </>
      }
    >
      <Form id="tell-trip" className={styles['form']} onSubmit={() => void keep()}>
        <Choice
          label="What"
          value={kind}
          options={tripEventKindSchema.options.map((value) => ({ value, words: TRIP_EVENT_WORDS[value] }))}
          onChange={setKind}
        />
        <DateField label="On" value={on} onChange={setOn} />
        <TextField label="In their words" value={note} maximum={500} onChange={setNote} isOptional isLong />
        {others > 0 && (
          <Checkbox
            label={`The same for the ${others === 1 ? 'other piece' : `${String(others)} others`} in the package`}
            isChecked={ofWholePackage}
            onChange={setOfWholePackage}
          />
        )}
      </Form>
      <ProblemNotice problem={telling.problem} />
    </Dialog>
  );
}

import { useState } from 'react';
import {
  clockMinutes,
  type forgottenWhy,
  roundedMinutes,
  type RunningClock,
  type WorkMeasure,
} from '#core/domain/clock';
import { formatMinutes, type Minutes } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { workDone, WorkDoneFields } from '#renderer/shared/work-done-fields';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface StopClockDialogProps {
  readonly running: RunningClock;
  readonly forgotten: ReturnType<typeof forgottenWhy>;
  readonly onClose: () => void;
}

/** Stops the clock and saves the time, rounded as the settings say, and what got done. A forgotten clock asks for the real time. */
export function StopClockDialog({ running, forgotten, onClose }: StopClockDialogProps) {
  const { settings } = useWorkshop();
  const [ran] = useState(() => clockMinutes(running.startedAt, Date.now()));
  const draft = useFormDraft(`stop-clock ${running.id}`);
  const [minutes, setMinutes] = useDraftValue<Minutes | null>(
    draft,
    'minutes',
    forgotten === null ? roundedMinutes(ran, settings.clockStepMinutes) : null,
  );
  const [measure, setMeasure] = useDraftValue<WorkMeasure | null>(draft, 'measure', null);
  const [amount, setAmount] = useDraftValue<number | null>(draft, 'amount', null);
  const [note, setNote] = useDraftValue(draft, 'note', '');
  const stopping = useDialogSave(useWrite('clock:stop'), onClose, draft);
  const deleting = useDialogSave(useWrite('work:delete'), onClose, draft);
  return (
    <DialogForm
      draft={draft}
      title={forgotten === null ? `Stop the clock on “${running.stageName}”` : 'Did you forget the clock?'}
      saving={{
        isSaving: stopping.isSaving || deleting.isSaving,
        problem: stopping.problem ?? deleting.problem,
      }}
      onSave={() => {
        if (minutes !== null && minutes !== 0)
          stopping.save({ minutes, done: workDone(measure, amount), note });
      }}
      onClose={onClose}
      className={layout['stack']}
      before={forgotten !== null && <ForgottenWords running={running} ran={ran} forgotten={forgotten} />}
      buttons={
        <Button
          look="quiet"
          disabled={deleting.isSaving}
          onClick={() => deleting.save({ workId: running.id })}
        >
          Delete this time
        </Button>
      }
    >
      <MinutesField label="Time worked" value={minutes} onCommit={setMinutes} autoFocus />
      <WorkDoneFields
        what={measure}
        amount={amount}
        onChange={(nextMeasure, nextAmount) => {
          setMeasure(nextMeasure);
          setAmount(nextAmount);
        }}
      />
      <TextField label="Note" value={note} maximum={300} onChange={setNote} isOptional />
    </DialogForm>
  );
}

interface ForgottenWordsProps extends Pick<StopClockDialogProps, 'running' | 'forgotten'> {
  readonly ran: number;
}

function ForgottenWords({ running, ran, forgotten }: ForgottenWordsProps) {
  return (
    <p>
      It has been running on “{running.stageName}” of {running.projectName} for {formatMinutes(ran)}
      {forgotten === 'overnight' ? ', overnight' : ''}. How long did you really work?
    </p>
  );
}

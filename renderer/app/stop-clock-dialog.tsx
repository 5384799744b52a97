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
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { WorkDoneFields, workDone } from '../shared/work-done-fields';
import styles from './clock.module.css';

interface StopClockDialogProps {
  readonly running: RunningClock;
  readonly forgotten: ReturnType<typeof forgottenWhy>;
  readonly onClose: () => void;
}

/** Stops the clock: how long it was (as it ran, rounded by setting), and what got done. A forgotten one asks how long it was in truth. */
export function StopClockDialog({ running, forgotten, onClose }: StopClockDialogProps) {
  const { settings } = useWorkshop();
  const [ran] = useState(() => clockMinutes(running.startedAt, Date.now()));
  const [minutes, setMinutes] = useState<Minutes | null>(
    forgotten === null ? roundedMinutes(ran, settings.clockStepMinutes) : null,
  );
  const [what, setWhat] = useState<WorkMeasure | null>(null);
  const [amount, setAmount] = useState<number | null>(null);
  const [note, setNote] = useState('');
  const stopping = useWrite('clock:stop');
  const dropping = useWrite('work:delete');
  const stop = async () => {
    if (minutes === null || minutes === 0) return;
    const stopped = await stopping.write({ minutes, done: workDone(what, amount), note });
    if (stopped.ok) onClose();
  };
  const drop = async () => {
    const dropped = await dropping.write({ workId: running.id });
    if (dropped.ok) onClose();
  };
  return (
    <Dialog
      title={forgotten === null ? `Stop the clock on “${running.stageName}”` : 'Was the clock forgotten?'}
      onClose={onClose}
      foot={
        <>
          <Button look="quiet" onClick={() => void drop()}>
            Throw the time away
          </Button>
          <Button onClick={onClose}>{forgotten === null ? 'Let it run' : 'I am still at it'}</Button>
          <Button look="main" type="submit" form="stop-clock" disabled={stopping.isWriting}>
            Keep the time
          </Button>
        </>
      }
    >
      {forgotten !== null && (
        <p>
          It has been running on “{running.stageName}” of {running.projectName} for {formatMinutes(ran)}
          {forgotten === 'overnight' ? ', overnight' : ''}. How long did you really work?
        </p>
      )}
      <Form id="stop-clock" className={styles['form']} onSubmit={() => void stop()}>
        <MinutesField label="Time worked" value={minutes} onCommit={setMinutes} autoFocus />
        <WorkDoneFields
          what={what}
          amount={amount}
          onChange={(nextWhat, nextAmount) => {
            setWhat(nextWhat);
            setAmount(nextAmount);
          }}
        />
        <TextField label="Note" value={note} maximum={300} onChange={setNote} isOptional />
      </Form>
      <ProblemNotice problem={stopping.problem ?? dropping.problem} />
    </Dialog>
  );
}

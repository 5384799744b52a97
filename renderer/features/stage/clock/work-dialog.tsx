import { useState } from 'react';
import type { Work } from '#core/domain/clock';
import type { Stage } from '#core/domain/stage';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Minutes, minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { DateField } from '#renderer/ui/fields/date-field';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { DoneFields, doneOf, USUAL_MEASURE } from '#renderer/ui/workshop/work-fields';
import styles from '../stage.module.css';

interface WorkDialogProps {
  readonly stage: Stage;
  /** Null for time that is written down anew. */
  readonly work: Work | null;
  readonly onClose: () => void;
}

/** Time worked without the clock, or a stretch put right afterwards. */
export function WorkDialog({ stage, work, onClose }: WorkDialogProps) {
  const [on, setOn] = useState<CalendarDate | null>(work?.on ?? today());
  const [minutes, setMinutes] = useState<Minutes | null>(
    work === null ? null : minutesFromWhole(work.minutes),
  );
  const [done, setDone] = useState({
    what: work === null ? (USUAL_MEASURE[stage.kind] ?? null) : (work.done?.what ?? null),
    amount: work?.done?.amount ?? null,
  });
  const [note, setNote] = useState(work?.note ?? '');
  const adding = useWrite('work:add');
  const changing = useWrite('work:change');
  const keep = async () => {
    if (on === null || minutes === null || minutes === 0) return;
    const details = { on, minutes, done: doneOf(done.what, done.amount), note };
    const kept =
      work === null
        ? await adding.write({ stageId: stage.id, details })
        : await changing.write({ workId: work.id, details });
    if (kept.ok) onClose();
  };
  return (
    <Dialog
      title={work === null ? 'Write down time' : 'Put the time right'}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Leave it</Button>
          <Button look="main" type="submit" form="work" disabled={adding.isWriting || changing.isWriting}>
            Keep the time
          </Button>
        </>
      }
    >
      <Form id="work" className={styles['part']} onSubmit={() => void keep()}>
        <MinutesField label="Time worked" value={minutes} onCommit={setMinutes} autoFocus />
        <DateField label="On" value={on} onChange={setOn} />
        <DoneFields {...done} onChange={(what, amount) => setDone({ what, amount })} />
        <TextField label="Note" value={note} maximum={300} onChange={setNote} isOptional />
      </Form>
      <ProblemNotice problem={adding.problem ?? changing.problem} />
    </Dialog>
  );
}

import { stageKindRecord } from '#core/domain/stage-kinds';
import type { Work } from '#core/domain/clock';
import type { Stage } from '#core/domain/stage';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Minutes, minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DateField } from '#renderer/ui/fields/date-field';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { WorkDoneFields, workDone } from '#renderer/shared/work-done-fields';
import layout from '#renderer/ui/page/layout.module.css';

interface WorkDialogProps {
  readonly stage: Stage;
  /** Null to add time; otherwise the entry to change. */
  readonly work: Work | null;
  readonly onClose: () => void;
}

/** Logs time worked without the clock, or changes an entry. */
export function WorkDialog({ stage, work, onClose }: WorkDialogProps) {
  const draft = useFormDraft(`work ${work?.id ?? stage.id}`);
  const [on, setOn] = useDraftValue<CalendarDate | null>(draft, 'on', work?.on ?? today());
  const [minutes, setMinutes] = useDraftValue<Minutes | null>(
    draft,
    'minutes',
    work === null ? null : minutesFromWhole(work.minutes),
  );
  const [done, setDone] = useDraftValue(draft, 'done', {
    what: work === null ? stageKindRecord(stage.kind).usuallyCounted : (work.done?.what ?? null),
    amount: work?.done?.amount ?? null,
  });
  const [note, setNote] = useDraftValue(draft, 'note', work?.note ?? '');
  const adding = useWrite('work:add');
  const changing = useWrite('work:change');
  const save = async () => {
    if (on === null || minutes === null || minutes === 0) return;
    const details = { on, minutes, done: workDone(done.what, done.amount), note };
    const saved =
      work === null
        ? await adding.write({ stageId: stage.id, details })
        : await changing.write({ workId: work.id, details });
    if (!saved.ok) return;
    draft.forget();
    onClose();
  };
  return (
    <DialogForm
      draft={draft}
      title={work === null ? 'Add time' : 'Change this time'}
      saving={{
        isSaving: adding.isWriting || changing.isWriting,
        problem: adding.problem ?? changing.problem,
      }}
      onSave={() => void save()}
      onClose={onClose}
      className={layout['part']}
    >
      <MinutesField label="Time worked" value={minutes} onCommit={setMinutes} autoFocus />
      <DateField label="Date" value={on} onChange={setOn} />
      <WorkDoneFields {...done} onChange={(what, amount) => setDone({ what, amount })} />
      <TextField label="Note" value={note} maximum={300} onChange={setNote} isOptional />
    </DialogForm>
  );
}

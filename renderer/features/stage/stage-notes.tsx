import type { Stage } from '#core/domain/stage';
import { minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';

/** What the maker writes about a stage: what holds it up, their estimate, notes. Each field is saved when it loses the focus. */
export function StageNotes({ stage }: { readonly stage: Stage }) {
  const draft = useFormDraft(`stage-notes ${stage.id}`);
  const [notes, setNotes] = useDraftValue(draft, 'notes', stage.notes);
  const [heldUpBy, setHeldUpBy] = useDraftValue(draft, 'heldUpBy', stage.heldUpBy);
  const changing = useWrite('stage:change');
  const save = async (part: Partial<Pick<Stage, 'notes' | 'heldUpBy' | 'estimateMinutes'>>) => {
    const next = {
      notes: stage.notes,
      heldUpBy: stage.heldUpBy,
      estimateMinutes: stage.estimateMinutes,
      ...part,
    };
    const saved = await changing.write({ stageId: stage.id, name: stage.name, ...next });
    if (saved.ok) draft.forget();
  };
  return (
    <section className={layout['part']} aria-label="Notes and estimate">
      <h3>Notes and estimate</h3>
      <TextField
        label="Held up by"
        help="While this is filled in, your bench shows the project as waiting."
        value={heldUpBy}
        onChange={setHeldUpBy}
        onBlur={() => heldUpBy.trim() !== stage.heldUpBy && void save({ heldUpBy })}
        maximum={300}
        isOptional
      />
      <MinutesField
        label="Your estimate"
        value={minutesFromWhole(stage.estimateMinutes)}
        onCommit={(minutes) => minutes !== null && void save({ estimateMinutes: minutes })}
      />
      <TextField
        label="Notes"
        value={notes}
        onChange={setNotes}
        onBlur={() => notes !== stage.notes && void save({ notes })}
        maximum={20_000}
        isLong
        isOptional
      />
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}

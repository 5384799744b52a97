import { useState } from 'react';
import type { Stage } from '#core/domain/stage';
import { minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from './stage.module.css';

/** What the maker writes of a stage: what holds it up, how long it takes, notes. Each is kept as it is left. */
export function StageJournal({ stage }: { readonly stage: Stage }) {
  const [notes, setNotes] = useState(stage.notes);
  const [heldUpBy, setHeldUpBy] = useState(stage.heldUpBy);
  const changing = useWrite('stage:change');
  const keep = (part: Partial<Pick<Stage, 'notes' | 'heldUpBy' | 'estimateMinutes'>>) => {
    const next = {
      notes: stage.notes,
      heldUpBy: stage.heldUpBy,
      estimateMinutes: stage.estimateMinutes,
      ...part,
    };
    void changing.write({ stageId: stage.id, name: stage.name, ...next });
  };
  return (
    <section className={styles['part']} aria-label="Journal of this stage">
      <h3>Journal</h3>
      <TextField
        label="Held up by"
        help="As long as something stands here, the bench says that the piece waits."
        value={heldUpBy}
        onChange={setHeldUpBy}
        onBlur={() => heldUpBy.trim() !== stage.heldUpBy && keep({ heldUpBy })}
        maximum={300}
        isOptional
      />
      <MinutesField
        label="Your hours for it, as a guess"
        value={minutesFromWhole(stage.estimateMinutes)}
        onCommit={(minutes) => minutes !== null && keep({ estimateMinutes: minutes })}
      />
      <TextField
        label="Notes"
        value={notes}
        onChange={setNotes}
        onBlur={() => notes !== stage.notes && keep({ notes })}
        maximum={20_000}
        isLong
        isOptional
      />
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}

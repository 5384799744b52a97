import { useState } from 'react';
import { openGateItems, type Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/button';
import { Checkbox } from '#renderer/ui/checkbox';
import { Form } from '#renderer/ui/form';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import { TextField } from '#renderer/ui/text-field';
import styles from './stage.module.css';

interface ChecklistProps {
  readonly stage: Stage;
  readonly stages: readonly Stage[];
}

/** What to check in a stage; the lines of its gate stand first and say that nothing starts before them. */
export function Checklist({ stage, stages }: ChecklistProps) {
  const open = new Set(openGateItems(stage, stages).map(({ id }) => id));
  const gate = stage.checklist.filter((item) => item.isGate);
  const others = stage.checklist.filter((item) => !item.isGate);
  return (
    <section className={styles['part']} aria-label="Checklist">
      {gate.length > 0 && (
        <>
          <h3>Before it starts</h3>
          <ul className={styles['lines']}>
            {gate.map((item) => (
              <Line key={item.id} item={item} isClosed={!open.has(item.id)} />
            ))}
          </ul>
        </>
      )}
      <h3>{gate.length > 0 ? 'On the way' : 'Checklist'}</h3>
      {others.length > 0 && (
        <ul className={styles['lines']}>
          {others.map((item) => (
            <Line key={item.id} item={item} isClosed={item.isTicked} />
          ))}
        </ul>
      )}
      <AddLine stage={stage} />
    </section>
  );
}

interface LineProps {
  readonly item: Stage['checklist'][number];
  /** Ticked, or closed by the stage that closes it. */
  readonly isClosed: boolean;
}

function Line({ item, isClosed }: LineProps) {
  const ticking = useWrite('checklist:tick');
  const removing = useWrite('checklist:remove');
  const isClosedByStage = isClosed && !item.isTicked;
  return (
    <li className={styles['line']}>
      <Checkbox
        label={item.text}
        isChecked={isClosed}
        isDisabled={isClosedByStage}
        help={isClosedByStage ? 'Ticked by its own stage' : undefined}
        onChange={(ticked) => void ticking.write({ checklistItemId: item.id, ticked })}
      />
      <span className={styles['onlyNear']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Remove “${item.text}”`}
          onClick={() => void removing.write({ checklistItemId: item.id })}
        >
          Remove
        </Button>
      </span>
    </li>
  );
}

function AddLine({ stage }: { readonly stage: Stage }) {
  const [text, setText] = useState('');
  const adding = useWrite('checklist:add');
  const add = async () => {
    if (text.trim() === '') return;
    const answer = await adding.write({ stageId: stage.id, text, isGate: false });
    if (answer.ok) setText('');
  };
  return (
    <Form label="Add a line to the checklist" className={styles['addLine']} onSubmit={() => void add()}>
      <TextField label="One more thing to check" value={text} onChange={setText} maximum={300} />
      <Button type="submit" disabled={adding.isWriting}>
        Add
      </Button>
      <ProblemNotice problem={adding.problem} />
    </Form>
  );
}

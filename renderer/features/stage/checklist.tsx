import type { ChecklistItem, Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Button } from '#renderer/ui/page/button';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { TickBox } from './tick-box';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './stage.module.css';

interface ChecklistProps {
  readonly stage: Stage;
  readonly stages: readonly Stage[];
}

/** What to check in a stage. The lines that must be ticked before it starts come first, under their own heading. */
export function Checklist({ stage, stages }: ChecklistProps) {
  const gate = stage.checklist.filter((item) => item.isGate);
  const others = stage.checklist.filter((item) => !item.isGate);
  return (
    <section className={layout['part']} aria-label="Checklist">
      {gate.length > 0 && (
        <>
          <h3>Before you start</h3>
          <ul className={styles['lines']}>
            {gate.map((item) => (
              <Line key={item.id} item={item} stages={stages} />
            ))}
          </ul>
        </>
      )}
      <h3>{gate.length > 0 ? 'Along the way' : 'Checklist'}</h3>
      {others.length > 0 && (
        <ul className={styles['lines']}>
          {others.map((item) => (
            <Line key={item.id} item={item} stages={stages} />
          ))}
        </ul>
      )}
      <AddLine stage={stage} />
    </section>
  );
}

function Line({ item, stages }: { readonly item: ChecklistItem; readonly stages: readonly Stage[] }) {
  const removing = useWrite('checklist:delete');
  return (
    <li className={styles['line']}>
      <TickBox item={item} stages={stages} />
      <span className={styles['onlyNear']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Delete “${item.text}”`}
          onClick={() => void removing.write({ checklistItemId: item.id })}
        >
          Delete
        </Button>
      </span>
    </li>
  );
}

function AddLine({ stage }: { readonly stage: Stage }) {
  const draft = useFormDraft(`check ${stage.id}`);
  const [text, setText] = useDraftValue(draft, 'text', '');
  const adding = useWrite('checklist:add');
  const add = async () => {
    if (text.trim() === '') return;
    const answer = await adding.write({ stageId: stage.id, text, isGate: false });
    if (answer.ok) draft.forget();
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

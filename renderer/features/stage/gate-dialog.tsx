import { useState } from 'react';
import type { ChecklistItem, Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { Notice } from '#renderer/ui/page/notice';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { TickBox } from './tick-box';
import styles from './stage.module.css';

interface GateDialogProps {
  readonly stage: Stage;
  /** The gate's lines that are still open. */
  readonly open: readonly ChecklistItem[];
  readonly onClose: () => void;
}

/** A gate that is not closed yet: tick what is true, and once all is, start; or say in writing why to go past it. */
export function GateDialog({ stage, open, onClose }: GateDialogProps) {
  const [asked] = useState(() => new Set(open.map(({ id }) => id)));
  const [why, setWhy] = useState('');
  const moving = useWrite('stage:move');
  const isFree = open.length === 0;
  const start = async () => {
    if (!isFree && why.trim() === '') return;
    const answer = await moving.write({
      stageId: stage.id,
      to: 'in-hand',
      ...(isFree ? {} : { passGateWhy: why }),
    });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={stage.kind === 'center-cut' ? 'Before the center is cut' : `Before “${stage.name}” starts`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button
            look="main"
            type="submit"
            form="gate"
            disabled={moving.isWriting || (!isFree && why.trim() === '')}
          >
            {isFree ? 'All is checked: start' : 'Start all the same'}
          </Button>
        </>
      }
    >
      {stage.kind === 'center-cut' && (
        <Notice kind="caution">
          A cut in a finished piece cannot be undone. Sharp blade, closed whenever it is put down; cut away
          from yourself, and nothing but this piece under the line.
        </Notice>
      )}
      <ul className={styles['lines']}>
        {stage.checklist
          .filter(({ id }) => asked.has(id))
          .map((item) => (
            <li key={item.id}>
              <TickBox item={item} isClosed={!open.some(({ id }) => id === item.id)} />
            </li>
          ))}
      </ul>
      <Form id="gate" onSubmit={() => void start()}>
        {!isFree && (
          <TextField
            label="Or go past this gate, because"
            help="Your reason is kept in the history of the piece."
            value={why}
            onChange={setWhy}
            maximum={1_000}
            isLong
            isOptional
          />
        )}
      </Form>
      <ProblemNotice problem={moving.problem} />
    </Dialog>
  );
}

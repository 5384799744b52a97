import { useState } from 'react';
import type { Stage } from '#core/domain/stage';
import { minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { CalculatorChoice } from '#renderer/ui/answers/calculator-choice';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { useTold } from '#renderer/ui/base/told';
import styles from './spread.module.css';

interface StageDialogProps {
  readonly stage: Stage;
  readonly count: number;
  readonly onMoveTo: (position: number) => void;
  readonly onClose: () => void;
}

/** Everything that can be changed of a stage's place in the plan. Each step is done at once and can be undone. */
export function StageDialog({ stage, count, onMoveTo, onClose }: StageDialogProps) {
  const [name, setName] = useState(stage.name);
  const [minutes, setMinutes] = useState(minutesFromWhole(stage.estimateMinutes));
  const [heldUpBy, setHeldUpBy] = useState(stage.heldUpBy);
  const changing = useWrite('stage:change');
  const keep = async () => {
    const { id, notes } = stage;
    const answer = await changing.write({
      stageId: id,
      name: name.trim(),
      estimateMinutes: minutes,
      heldUpBy,
      notes,
    });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={stage.name}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Close</Button>
          <Button look="main" type="submit" form="stage" disabled={changing.isWriting}>
            Keep the changes
          </Button>
        </>
      }
    >
      <Form id="stage" className={styles['dialogForm']} onSubmit={() => void keep()}>
        <TextField
          label="Name"
          value={name}
          maximum={120}
          emptyProblem="A stage needs a name."
          onChange={setName}
        />
        <MinutesField
          label="It will take about"
          value={minutes}
          help="Hours at the bench, such as 2 h 30 or 45 min."
          onCommit={(next) => {
            if (next !== null) setMinutes(next);
          }}
        />
        <TextField
          label="Held up by"
          isOptional
          help="What it waits for, such as thread on order. Empty when nothing does."
          value={heldUpBy}
          maximum={300}
          onChange={setHeldUpBy}
        />
      </Form>
      <StageSetUp stage={stage} />
      <StageSteps stage={stage} count={count} onMoveTo={onMoveTo} onClose={onClose} />
      <ProblemNotice problem={changing.problem} />
    </Dialog>
  );
}

/** How a stage is set up in its project; kept as it is changed. */
function StageSetUp({ stage }: { readonly stage: Stage }) {
  const settingUp = useWrite('stage:set-up');
  const [setUp, tell, forget] = useTold({ isBeside: stage.isBeside, calculators: stage.calculators });
  const keep = async (part: Partial<typeof setUp>) => {
    const next = { ...setUp, ...part };
    tell(next);
    const kept = await settingUp.write({ stageId: stage.id, ...next });
    if (!kept.ok) forget();
  };
  return (
    <div>
      {stage.position > 0 && (
        <Checkbox
          label="May run side by side with the stage before it"
          isChecked={setUp.isBeside}
          onChange={(isBeside) => void keep({ isBeside })}
        />
      )}
      <CalculatorChoice
        kind={stage.kind}
        chosen={setUp.calculators}
        onChange={(calculators) => void keep({ calculators })}
      />
      <ProblemNotice problem={settingUp.problem} />
    </div>
  );
}

function StageSteps({ stage, count, onMoveTo, onClose }: StageDialogProps) {
  const moving = useWrite('stage:move');
  const repeating = useWrite('stage:repeat');
  const removing = useWrite('stage:remove');
  const closeAfter = async (done: Promise<{ readonly ok: boolean }>) => {
    if ((await done).ok) onClose();
  };
  const stageId = stage.id;
  const isOver = stage.state === 'done' || stage.state === 'skipped';
  return (
    <div className={styles['steps']}>
      <Button isSmall disabled={stage.position === 0} onClick={() => onMoveTo(stage.position - 1)}>
        Earlier
      </Button>
      <Button isSmall disabled={stage.position >= count - 1} onClick={() => onMoveTo(stage.position + 1)}>
        Later
      </Button>
      <Button isSmall onClick={() => void closeAfter(repeating.write({ stageId }))}>
        Do it once more
      </Button>
      {isOver ? (
        <Button isSmall onClick={() => void closeAfter(moving.write({ stageId, to: 'planned' }))}>
          {stage.state === 'done' ? 'Not done after all' : 'Needed after all'}
        </Button>
      ) : (
        <Button isSmall onClick={() => void closeAfter(moving.write({ stageId, to: 'skipped' }))}>
          Skip it
        </Button>
      )}
      <Button isSmall onClick={() => void closeAfter(removing.write({ stageId }))}>
        Remove it
      </Button>
      <ProblemNotice problem={moving.problem ?? repeating.problem ?? removing.problem} />
    </div>
  );
}

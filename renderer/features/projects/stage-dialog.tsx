import { isOver, type Stage } from '#core/domain/stage';
import { minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { CalculatorChoice } from '#renderer/ui/answers/calculator-choice';
import { useOptimisticValue } from '#renderer/ui/base/optimistic-value';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from './spread.module.css';

interface StageDialogProps {
  readonly stage: Stage;
  readonly count: number;
  readonly onMoveTo: (position: number) => void;
  readonly onClose: () => void;
}

/** Changes a stage. Its texts and estimate are saved with the form; everything below takes effect at once and can be undone. */
export function StageDialog({ stage, count, onMoveTo, onClose }: StageDialogProps) {
  const draft = useFormDraft(`stage ${stage.id}`);
  const [name, setName] = useDraftValue(draft, 'name', stage.name);
  const [minutes, setMinutes] = useDraftValue(draft, 'minutes', minutesFromWhole(stage.estimateMinutes));
  const [heldUpBy, setHeldUpBy] = useDraftValue(draft, 'heldUpBy', stage.heldUpBy);
  const saving = useDialogSave(useWrite('stage:change'), onClose, draft);
  const save = () => {
    const { id: stageId, notes } = stage;
    saving.save({ stageId, name: name.trim(), estimateMinutes: minutes, heldUpBy, notes });
  };
  return (
    <DialogForm
      draft={draft}
      title={stage.name}
      saving={saving}
      onSave={save}
      onClose={onClose}
      className={layout['stack']}
      after={
        <>
          <StageSetUp stage={stage} />
          <StageSteps stage={stage} count={count} onMoveTo={onMoveTo} onClose={onClose} />
        </>
      }
    >
      <TextField
        label="Name"
        value={name}
        maximum={120}
        emptyProblem="Give the stage a name."
        onChange={setName}
      />
      <MinutesField
        label="Estimate"
        value={minutes}
        help="Your sewing time, such as 2 h 30 or 45 min."
        onCommit={(next) => {
          if (next !== null) setMinutes(next);
        }}
      />
      <TextField
        label="Waiting for"
        isOptional
        help="Such as thread on order. Leave blank if nothing’s in the way."
        value={heldUpBy}
        maximum={300}
        onChange={setHeldUpBy}
      />
    </DialogForm>
  );
}

/** How a stage is set up in its project, saved as it is changed. */
function StageSetUp({ stage }: { readonly stage: Stage }) {
  const settingUp = useWrite('stage:set-up');
  const [setUp, show, forget] = useOptimisticValue({
    isBeside: stage.isBeside,
    calculators: stage.calculators,
  });
  const save = async (part: Partial<typeof setUp>) => {
    const next = { ...setUp, ...part };
    show(next);
    const saved = await settingUp.write({ stageId: stage.id, ...next });
    if (!saved.ok) forget();
  };
  return (
    <div>
      {stage.position > 0 && (
        <Checkbox
          label="Can be worked on alongside the stage before it"
          isChecked={setUp.isBeside}
          onChange={(isBeside) => void save({ isBeside })}
        />
      )}
      <CalculatorChoice
        kind={stage.kind}
        chosen={setUp.calculators}
        onChange={(calculators) => void save({ calculators })}
      />
      <ProblemNotice problem={settingUp.problem} />
    </div>
  );
}

function StageSteps({ stage, count, onMoveTo, onClose }: StageDialogProps) {
  const moving = useDialogSave(useWrite('stage:move'), onClose);
  const repeating = useDialogSave(useWrite('stage:repeat'), onClose);
  const deleting = useDialogSave(useWrite('stage:delete'), onClose);
  const stageId = stage.id;
  return (
    <div className={styles['steps']}>
      <Button isSmall disabled={stage.position === 0} onClick={() => onMoveTo(stage.position - 1)}>
        Earlier
      </Button>
      <Button isSmall disabled={stage.position >= count - 1} onClick={() => onMoveTo(stage.position + 1)}>
        Later
      </Button>
      <Button isSmall onClick={() => repeating.save({ stageId })}>
        Repeat it
      </Button>
      {isOver(stage) ? (
        <Button isSmall onClick={() => moving.save({ stageId, to: 'planned' })}>
          {stage.state === 'done' ? 'Mark as not done' : 'Don’t skip it'}
        </Button>
      ) : (
        <Button isSmall onClick={() => moving.save({ stageId, to: 'skipped' })}>
          Skip it
        </Button>
      )}
      <Button isSmall onClick={() => deleting.save({ stageId })}>
        Delete
      </Button>
      <ProblemNotice problem={moving.problem ?? repeating.problem ?? deleting.problem} />
    </div>
  );
}

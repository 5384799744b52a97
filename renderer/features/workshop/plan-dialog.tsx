import { useState } from 'react';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { type PlanDraft, withoutStage, withStageAdded, withStageChanged, withStageMoved } from './plan-draft';
import { PlanStage } from './plan-stage';
import styles from './workshop.module.css';

interface PlanDialogProps {
  readonly start: PlanDraft;
  readonly onClose: () => void;
}

/** Writes or changes a plan of the maker's own: its stages in order, each with its kind, its hours and its checklist. */
export function PlanDialog({ start, onClose }: PlanDialogProps) {
  const [draft, setDraft] = useState(start);
  const keeping = useWrite('stage-plan:keep');
  const keep = async () => {
    const stages = draft.stages.map(({ key: _key, ...stage }) => ({
      ...stage,
      checklist: stage.checklist.filter(({ text }) => text.trim() !== ''),
    }));
    const answer = await keeping.write({ stagePlanId: draft.id, name: draft.name, says: draft.says, stages });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={draft.id === null ? 'A stage plan of your own' : 'Change the plan'}
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Leave it</Button>
          <Button
            look="main"
            type="submit"
            form="plan"
            disabled={keeping.isWriting || draft.stages.length === 0}
          >
            Keep the plan
          </Button>
        </>
      }
    >
      <Form id="plan" onSubmit={() => void keep()}>
        <div className={styles['fields']}>
          <TextField
            label="Name of the plan"
            value={draft.name}
            maximum={120}
            emptyProblem="A plan needs a name."
            onChange={(name) => setDraft({ ...draft, name })}
            autoFocus
          />
          <TextField
            label="What it is for"
            value={draft.says}
            maximum={300}
            onChange={(says) => setDraft({ ...draft, says })}
            isOptional
          />
        </div>
        <ol className={styles['lines']}>
          {draft.stages.map((stage, index) => (
            <PlanStage
              key={stage.key}
              stage={stage}
              place={index + 1}
              isLast={index === draft.stages.length - 1}
              onChange={(part) => setDraft(withStageChanged(draft, stage.key, part))}
              onMove={(by) => setDraft(withStageMoved(draft, stage.key, by))}
              onRemove={() => setDraft(withoutStage(draft, stage.key))}
            />
          ))}
        </ol>
        <Button onClick={() => setDraft(withStageAdded(draft))} disabled={draft.stages.length >= 40}>
          Add a stage
        </Button>
      </Form>
      <ProblemNotice problem={keeping.problem} />
    </Dialog>
  );
}

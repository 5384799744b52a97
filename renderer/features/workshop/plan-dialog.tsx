import { useWrite } from '#renderer/bridge/query';
import { DraftPlaceContext, useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { type PlanDraft, withoutStage, withStageAdded, withStageChanged, withStageMoved } from './plan-draft';
import { PlanStage } from './plan-stage';

const MAXIMUM_STAGES = 40;

interface PlanDialogProps {
  readonly start: PlanDraft;
  readonly onClose: () => void;
}

/** Adds or changes one of the maker's own stage plans: its stages in order, each with its kind, hours and checklist. */
export function PlanDialog({ start, onClose }: PlanDialogProps) {
  const typed = useFormDraft(`stage-plan ${start.id ?? 'new'}`);
  const [draft, setDraft] = useDraftValue(typed, 'draft', start);
  const saving = useDialogSave(useWrite('stage-plan:save'), onClose, typed);
  const save = () => {
    const stages = draft.stages.map(({ key: _key, ...stage }) => ({
      ...stage,
      checklist: stage.checklist.filter(({ text }) => text.trim() !== ''),
    }));
    saving.save({ stagePlanId: draft.id, name: draft.name, says: draft.says, stages });
  };
  return (
    <DialogForm
      draft={typed}
      title={draft.id === null ? 'Add a stage plan' : 'Change the stage plan'}
      isWide
      saving={saving}
      canSave={draft.stages.length > 0}
      onSave={save}
      onClose={onClose}
    >
      <div className={layout['pair']}>
        <TextField
          label="Name of the plan"
          value={draft.name}
          maximum={120}
          emptyProblem="Give the plan a name."
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
      <ol className={layout['lines']}>
        {draft.stages.map((stage, index) => (
          <DraftPlaceContext key={stage.key} value={`stage ${stage.key}`}>
            <PlanStage
              stage={stage}
              number={index + 1}
              isLast={index === draft.stages.length - 1}
              onChange={(part) => setDraft(withStageChanged(draft, stage.key, part))}
              onMove={(by) => setDraft(withStageMoved(draft, stage.key, by))}
              onDelete={() => setDraft(withoutStage(draft, stage.key))}
            />
          </DraftPlaceContext>
        ))}
      </ol>
      <Button
        onClick={() => setDraft(withStageAdded(draft))}
        disabled={draft.stages.length >= MAXIMUM_STAGES}
      >
        Add a stage
      </Button>
    </DialogForm>
  );
}

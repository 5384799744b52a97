import type { ProjectId } from '#core/domain/ids';
import { type Stage, stageKindSchema } from '#core/domain/stage';
import { type StageKind, stageKindRecord } from '#core/domain/stage-kinds';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface AddStageDialogProps {
  readonly projectId: ProjectId;
  readonly stages: readonly Stage[];
  readonly onClose: () => void;
}

/** Adds a stage anywhere among the stages. The name follows the kind until the maker types one. */
export function AddStageDialog({ projectId, stages, onClose }: AddStageDialogProps) {
  const draft = useFormDraft(`add-stage ${projectId}`);
  const [kind, setKind] = useDraftValue<StageKind>(draft, 'kind', 'other');
  const [ownName, setOwnName] = useDraftValue<string | null>(draft, 'ownName', null);
  const [position, setPosition] = useDraftValue(draft, 'position', stages.length);
  const saving = useDialogSave(useWrite('stage:add'), onClose, draft);
  const name = ownName ?? (kind === 'other' ? '' : stageKindRecord(kind).words);
  const positions = [
    ...stages.map((stage, index) => ({ value: index, words: `Before ${stage.name}` })),
    { value: stages.length, words: 'At the end' },
  ];
  return (
    <DialogForm
      draft={draft}
      title="Add a stage"
      saving={saving}
      onSave={() => saving.save({ projectId, position, kind, name: name.trim() })}
      onClose={onClose}
      className={layout['stack']}
    >
      <Select
        label="Kind of stage"
        help="The kind decides which calculators the stage offers."
        value={kind}
        options={stageKindSchema.options.map((value) => ({ value, words: stageKindRecord(value).words }))}
        onChange={setKind}
      />
      <TextField
        label="Name"
        value={name}
        maximum={120}
        emptyProblem="Give the stage a name."
        onChange={setOwnName}
      />
      <Select label="Where" value={position} options={positions} onChange={setPosition} />
    </DialogForm>
  );
}

import { useState } from 'react';
import type { ProjectId } from '#core/domain/ids';
import { type Stage, stageKindSchema } from '#core/domain/stage';
import { type StageKind, stageKindRecord } from '#core/domain/stage-kinds';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from './spread.module.css';

interface AddStageDialogProps {
  readonly projectId: ProjectId;
  readonly stages: readonly Stage[];
  readonly onClose: () => void;
}

/** Puts one more stage anywhere in the plan. The name follows the kind until it is changed by hand. */
export function AddStageDialog({ projectId, stages, onClose }: AddStageDialogProps) {
  const [kind, setKind] = useState<StageKind>('other');
  const [ownName, setOwnName] = useState<string | null>(null);
  const [position, setPosition] = useState(stages.length);
  const adding = useWrite('stage:add');
  const name = ownName ?? (kind === 'other' ? '' : stageKindRecord(kind).words);
  const add = async () => {
    const answer = await adding.write({ projectId, position, kind, name: name.trim() });
    if (answer.ok) onClose();
  };
  const places = [
    ...stages.map((stage, index) => ({ value: index, words: `Before ${stage.name}` })),
    { value: stages.length, words: 'At the end' },
  ];
  return (
    <Dialog
      title="Add a stage"
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Leave it</Button>
          <Button look="main" type="submit" form="add-stage" disabled={adding.isWriting}>
            Add it
          </Button>
        </>
      }
    >
      <Form id="add-stage" className={styles['dialogForm']} onSubmit={() => void add()}>
        <Select
          label="What is done in it"
          help="The kind decides which numbers the stage offers."
          value={kind}
          options={stageKindSchema.options.map((value) => ({ value, words: stageKindRecord(value).words }))}
          onChange={setKind}
        />
        <TextField
          label="Name"
          value={name}
          maximum={120}
          emptyProblem="A stage needs a name."
          onChange={setOwnName}
        />
        <Select label="Where" value={position} options={places} onChange={setPosition} />
      </Form>
      <ProblemNotice problem={adding.problem} />
    </Dialog>
  );
}

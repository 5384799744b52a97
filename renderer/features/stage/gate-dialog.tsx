import { useState } from 'react';
import { CAUTIONS } from '#core/domain/cautions';
import type { ChecklistItem, Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import { Notice } from '#renderer/ui/page/notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { TickBox } from './tick-box';
import styles from './stage.module.css';

interface GateDialogProps {
  readonly stage: Stage;
  /** The lines that must be ticked before the stage starts and are still open. */
  readonly open: readonly ChecklistItem[];
  readonly onClose: () => void;
}

/** Asks for the checks a stage waits for: once all are ticked it starts. The maker may start anyway if they give a reason. */
export function GateDialog({ stage, open, onClose }: GateDialogProps) {
  const [asked] = useState(() => new Set(open.map(({ id }) => id)));
  const draft = useFormDraft(`gate ${stage.id}`);
  const [why, setWhy] = useDraftValue(draft, 'why', '');
  const saving = useDialogSave(useWrite('stage:move'), onClose, draft);
  const isAllChecked = open.length === 0;
  const start = () =>
    saving.save({
      stageId: stage.id,
      to: 'in-hand',
      ...(isAllChecked ? {} : { passGateWhy: why }),
    });
  const checks = (
    <>
      {stage.kind === 'center-cut' && <CenterCutNotices />}
      <ul className={styles['lines']}>
        {stage.checklist
          .filter(({ id }) => asked.has(id))
          .map((item) => (
            <li key={item.id}>
              <TickBox item={item} isClosed={!open.some(({ id }) => id === item.id)} />
            </li>
          ))}
      </ul>
    </>
  );
  return (
    <DialogForm
      draft={draft}
      title={stage.kind === 'center-cut' ? 'Before the center is cut' : `Before “${stage.name}” starts`}
      saving={saving}
      verb={isAllChecked ? 'Start' : 'Start anyway'}
      canSave={isAllChecked || why.trim() !== ''}
      onSave={start}
      onClose={onClose}
      before={checks}
    >
      {!isAllChecked && (
        <TextField
          label="Start anyway because…"
          help="Saved in the project’s log."
          value={why}
          onChange={setWhy}
          maximum={1_000}
          isLong
          isOptional
        />
      )}
    </DialogForm>
  );
}

function CenterCutNotices() {
  return (
    <>
      <Notice kind="warning" title="This can’t be undone">
        A hole cut in a finished quilt stays cut. Make sure nothing but this quilt is under the line.
      </Notice>
      <Notice kind="caution">
        <p>{CAUTIONS.rotaryBlade}</p>
        <p>{CAUTIONS.scissors}</p>
      </Notice>
    </>
  );
}

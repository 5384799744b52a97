import { useState } from 'react';
import { CAUTIONS } from '#core/domain/cautions';
import type { Measurements } from '#core/domain/measurements';
import { openGateItems, type Stage } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { useWrite } from '#renderer/bridge/query';
import { UnsettledFacts, useIsCutSettled } from '#renderer/shared/unsettled-facts';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import { Notice } from '#renderer/ui/page/notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { TickBox } from './tick-box';
import styles from './stage.module.css';

interface GateDialogProps {
  readonly stage: Stage;
  readonly stages: readonly Stage[];
  readonly measurements: Measurements;
  readonly onClose: () => void;
}

/** Asks for the checks a stage waits for: once all are ticked it starts. The maker may start anyway if they give a reason. */
export function GateDialog({ stage, stages, measurements, onClose }: GateDialogProps) {
  const open = openGateItems(stage, stages);
  const [asked] = useState(() => new Set(open.map(({ id }) => id)));
  const draft = useFormDraft(`gate ${stage.id}`);
  const [why, setWhy] = useDraftValue(draft, 'why', '');
  const saving = useDialogSave(useWrite('stage:move'), onClose, draft);
  const isAllChecked = open.length === 0;
  const cutsHole = stageKindRecord(stage.kind).isIrreversible;
  const isSettled = useIsCutSettled(stage.projectId) === true || !cutsHole;
  const start = () =>
    saving.save({
      stageId: stage.id,
      to: 'in-hand',
      ...(isAllChecked ? {} : { passGateWhy: why }),
    });
  const checks = (
    <>
      {cutsHole && (
        <>
          <CenterCutNotices />
          <UnsettledFacts projectId={stage.projectId} measurements={measurements} />
        </>
      )}
      <ul className={styles['lines']}>
        {stage.checklist
          .filter(({ id }) => asked.has(id))
          .map((item) => (
            <li key={item.id}>
              <TickBox item={item} stages={stages} />
            </li>
          ))}
      </ul>
    </>
  );
  return (
    <DialogForm
      draft={draft}
      title={cutsHole ? 'Before the center is cut' : `Before “${stage.name}” starts`}
      saving={saving}
      verb={isAllChecked ? 'Start' : 'Start anyway'}
      canSave={isSettled && (isAllChecked || why.trim() !== '')}
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

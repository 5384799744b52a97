import type { Fabric } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { detailsOf } from '#renderer/features/stash/fabric-draft';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { LooksFields, MoreFields } from './fabric-fields';

interface ChangeFabricDialogProps {
  readonly fabric: Fabric;
  readonly onClose: () => void;
}

/** Changes the details of a fabric; its pieces keep their measurements. */
export function ChangeFabricDialog({ fabric, onClose }: ChangeFabricDialogProps) {
  const draft = useFormDraft(`fabric ${fabric.id}`);
  const [details, setDetails] = useDraftValue(draft, 'details', () => detailsOf(fabric));
  const saving = useDialogSave(useWrite('fabric:change'), onClose, draft);
  return (
    <DialogForm
      draft={draft}
      title="Change this fabric"
      isWide
      saving={saving}
      onSave={() => saving.save({ fabricId: fabric.id, details })}
      onClose={onClose}
      className={layout['sections']}
    >
      <LooksFields details={details} onChange={setDetails} />
      <MoreFields details={details} onChange={setDetails} />
    </DialogForm>
  );
}

import type { FabricPiece } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { PlaceField } from '#renderer/features/stash/place-field';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface MoveFabricDialogProps {
  readonly piece: FabricPiece;
  readonly onClose: () => void;
}

/** Asks for the place of one piece of fabric, apart from the rest of its fabric. */
export function MoveFabricDialog({ piece, onClose }: MoveFabricDialogProps) {
  const draft = useFormDraft(`move-piece ${piece.id}`);
  const [path, setPath] = useDraftValue(draft, 'path', piece.place);
  const saving = useDialogSave(useWrite('piece:store-in'), onClose, draft);
  return (
    <DialogForm
      draft={draft}
      title="Move this piece of fabric"
      saving={saving}
      verb="Move it here"
      onSave={() => saving.save({ pieceId: piece.id, path })}
      onClose={onClose}
      className={layout['stack']}
    >
      <PlaceField
        label="Stored in"
        help="Room, then shelf, then bin, separated by commas. Leave blank to keep it with the rest of this fabric."
        value={path}
        autoFocus
        onChange={setPath}
      />
    </DialogForm>
  );
}

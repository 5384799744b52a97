import type { Fabric } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { BoughtFields } from '#renderer/features/stash/bought-fields';
import { emptyPiece, purchaseOf } from '#renderer/features/stash/fabric-draft';
import { PlaceField } from '#renderer/features/stash/place-field';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface BuyDialogProps {
  readonly fabric: Fabric;
  readonly onClose: () => void;
}

/** Adds another piece to a fabric. */
export function BuyDialog({ fabric, onClose }: BuyDialogProps) {
  const draft = useFormDraft(`buy ${fabric.id}`);
  const [piece, setPiece] = useDraftValue(draft, 'piece', () => emptyPiece(null));
  const saving = useDialogSave(useWrite('ledger:buy'), onClose, draft);
  const save = () => {
    const bought = purchaseOf(piece, fabric.id);
    if (bought !== null) saving.save(bought);
  };
  return (
    <DialogForm
      draft={draft}
      title="Add a piece of fabric"
      saving={saving}
      onSave={save}
      onClose={onClose}
      className={layout['stack']}
    >
      <BoughtFields piece={piece} fabricWidth={fabric.width} autoFocus onChange={setPiece} />
      <PlaceField
        label="Stored elsewhere"
        help="Only if it is not with the rest of this fabric."
        value={piece.place}
        onChange={(place) => setPiece({ ...piece, place })}
      />
      <TextField
        label="Note"
        isOptional
        value={piece.note}
        maximum={500}
        onChange={(note) => setPiece({ ...piece, note })}
      />
    </DialogForm>
  );
}

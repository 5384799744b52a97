import type { FabricPage } from '#core/contract/stash';
import { costAgain } from '#core/stash/replacement';
import { useWrite } from '#renderer/bridge/query';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { useDisplay } from '#renderer/ui/base/display';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface PriceDialogProps {
  readonly opened: FabricPage;
  readonly onClose: () => void;
}

/** Asks for today's shop price of a fabric. Without one, the price last paid is used. */
export function PriceDialog({ opened: { fabric, price }, onClose }: PriceDialogProps) {
  const unit = shopUnit(useDisplay().length);
  const draft = useFormDraft(`price ${fabric.id}`);
  const [minor, setMinor] = useDraftValue(
    draft,
    'minor',
    price === null ? null : costAgain(unit.length * fabric.width, price),
  );
  const saving = useDialogSave(useWrite('fabric:set-price'), onClose, draft);
  const save = () => {
    const shopPrice = minor === null || minor === 0 ? null : { minor, length: unit.length };
    saving.save({ fabricId: fabric.id, price: shopPrice });
  };
  return (
    <DialogForm
      draft={draft}
      title={`Price of ${fabric.name}`}
      saving={saving}
      onSave={save}
      onClose={onClose}
      className={layout['stack']}
    >
      <MoneyField
        label={`Price of a ${unit.word}`}
        help="Across the usable width. Leave blank to use the price you last paid."
        value={minor}
        maximum={100_000_000}
        isOptional
        autoFocus
        onCommit={setMinor}
      />
    </DialogForm>
  );
}

import type { FabricDetails } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { BoughtFields } from '#renderer/features/stash/bought-fields';
import { emptyDraft, type PieceDraft } from '#renderer/features/stash/fabric-draft';
import { PlaceField } from '#renderer/features/stash/place-field';
import { today } from '#renderer/text/dates';
import { nameToBuy, type ShopEntry } from '#renderer/text/shopping-words';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { newFabric, pieceToBuy, projectNames, purchaseOfEntry } from './shop-purchase';

interface ShopBuyDialogProps {
  readonly entry: ShopEntry;
  readonly onClose: () => void;
}

/** Asks what was bought and what it cost, and takes the line off the list. What projects need of it can be set aside at once. */
export function ShopBuyDialog({ entry, onClose }: ShopBuyDialogProps) {
  const { settings } = useWorkshop();
  const line = entry.kind === 'needed' ? entry.line : null;
  const fabricWidth = line?.width ?? settings.fabricWidth;
  const draft = useFormDraft(`bought ${entry.kind === 'own' ? entry.line.id : nameToBuy(entry.line)}`);
  const [piece, setPiece] = useDraftValue<PieceDraft>(draft, 'piece', () => pieceToBuy(line, today()));
  const [fabric, setFabric] = useDraftValue<FabricDetails>(draft, 'fabric', () =>
    newFabric(entry, emptyDraft(fabricWidth).fabric),
  );
  const [isHeld, setIsHeld] = useDraftValue(draft, 'isHeld', true);
  const saving = useDialogSave(useWrite('shopping:buy'), onClose, draft);
  const deleting = useDialogSave(useWrite('shopping:delete-line'), onClose, draft);
  const isNewFabric = (line?.fabric ?? null) === null;
  const projects = projectNames(entry);
  const save = () => {
    const purchase = purchaseOfEntry({ entry, piece, fabric, isHeld });
    if (purchase !== null) saving.save(purchase);
  };
  return (
    <DialogForm
      draft={draft}
      title={`Bought: ${entry.kind === 'own' ? entry.line.words : nameToBuy(entry.line)}`}
      isWide
      saving={{ isSaving: saving.isSaving, problem: saving.problem ?? deleting.problem }}
      onSave={save}
      onClose={onClose}
      className={layout['stack']}
      buttons={
        entry.kind === 'own' && (
          <Button
            look="quiet"
            disabled={deleting.isSaving}
            onClick={() => deleting.save({ lineId: entry.line.id })}
          >
            Don’t add it to the stash
          </Button>
        )
      }
    >
      {isNewFabric && <NewFabricFields fabric={fabric} onChange={setFabric} />}
      <BoughtFields piece={piece} fabricWidth={fabricWidth} autoFocus onChange={setPiece} />
      <PlaceField
        label={isNewFabric ? 'Stored in' : 'Stored elsewhere'}
        value={piece.place}
        onChange={(place) => setPiece({ ...piece, place })}
      />
      {projects !== '' && (
        <Checkbox label={`Set it aside for ${projects}`} isChecked={isHeld} onChange={setIsHeld} />
      )}
    </DialogForm>
  );
}

interface NewFabricFieldsProps {
  readonly fabric: FabricDetails;
  readonly onChange: (fabric: FabricDetails) => void;
}

function NewFabricFields({ fabric, onChange }: NewFabricFieldsProps) {
  return (
    <div className={layout['fields']}>
      <TextField
        label="Name"
        value={fabric.name}
        maximum={120}
        emptyProblem="Give it a name, so that you can find it again."
        onChange={(name) => onChange({ ...fabric, name })}
      />
      <TextField
        label="Shop"
        isOptional
        value={fabric.supplier}
        maximum={120}
        onChange={(supplier) => onChange({ ...fabric, supplier })}
      />
    </div>
  );
}

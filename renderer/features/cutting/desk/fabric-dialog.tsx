import type { FabricGlance } from '#core/contract/stash';
import { fabricOf, type CuttingSetup } from '#core/domain/cutting-setup';
import type { FabricId } from '#core/domain/ids';
import { formatArea } from '#core/units/format-area';
import { useRead } from '#renderer/bridge/query';
import { counted } from '#renderer/text/cut-words';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { type OptionRow, OptionRows } from '#renderer/ui/fields/option-rows';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import type { PatchGroup } from './setup-changes';

interface FabricDialogProps {
  readonly group: PatchGroup;
  readonly setup: CuttingSetup;
  /** Fabrics with something set aside for these projects; shown first. */
  readonly heldFabrics: readonly FabricId[];
  readonly onChoose: (fabricId: FabricId | null) => void;
  readonly onClose: () => void;
}

/** Chooses the fabric of the stash that a fabric of the list is cut from. */
export function FabricDialog({ group, setup, heldFabrics, onChoose, onClose }: FabricDialogProps) {
  const draft = useFormDraft(`cutting-fabric ${setup.projects.join(' ')} ${group.fabric}`);
  const [search, setSearch] = useDraftValue(draft, 'search', '');
  const [chosen, setChosen] = useDraftValue<FabricId | null>(draft, 'chosen', fabricOf(setup, group) ?? null);
  const { value: found } = useRead('fabric:list', { search, limit: 200 }, { keepsPrevious: true });
  const display = useDisplay();
  const items = (found?.items ?? [])
    .map((item) => ({ item, isHeld: heldFabrics.includes(item.fabric.id) }))
    .toSorted((first, second) => Number(second.isHeld) - Number(first.isHeld));
  const take = (fabricId: FabricId | null) => {
    draft.forget();
    onChoose(fabricId);
    onClose();
  };
  return (
    <DialogForm
      draft={draft}
      title={`Fabric for ${group.fabric}`}
      verb="Cut from this fabric"
      isWide
      canSave={chosen !== null}
      onSave={() => take(chosen)}
      onClose={onClose}
      before={
        <TextField
          label="Find the fabric"
          help="Any words: name, color, print, place."
          value={search}
          onChange={setSearch}
          autoFocus
        />
      }
      buttons={
        <Button look="quiet" onClick={() => take(null)}>
          Plan to buy it new
        </Button>
      }
    >
      {items.length === 0 && found !== undefined && (
        <p className={layout['quiet']}>
          {search.trim() === ''
            ? 'There is no fabric in your stash yet.'
            : 'No fabric in your stash matches your search.'}
        </p>
      )}
      <OptionRows
        legend="Which fabric of your stash"
        rows={items.map(({ item, isHeld }) => rowOf(item, isHeld, display))}
        chosen={chosen}
        onChoose={setChosen}
      />
    </DialogForm>
  );
}

function rowOf(
  { fabric, pieces, areaFree }: FabricGlance,
  isHeld: boolean,
  { length }: Display,
): OptionRow<FabricId> {
  const place = fabric.place === '' ? 'no place noted' : fabric.place;
  return {
    value: fabric.id,
    name: fabric.name,
    swatch: fabric.swatch,
    under: isHeld ? `${place}, set aside for this project` : place,
    underRight:
      pieces.length === 0
        ? 'used up'
        : `${counted(pieces.length, 'piece')}, ${formatArea(areaFree, length)} free`,
  };
}

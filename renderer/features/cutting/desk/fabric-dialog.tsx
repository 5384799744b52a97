import { useId, useState } from 'react';
import { fabricOf, type CuttingSetup } from '#core/domain/cutting-setup';
import type { FabricId } from '#core/domain/ids';
import type { Fabric } from '#core/domain/stash';
import { formatArea } from '#core/units/format-area';
import { useRead } from '#renderer/bridge/query';
import { counted } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { TextField } from '#renderer/ui/fields/text-field';
import { type PatchGroup } from './setup-changes';
import styles from '../cutting.module.css';

interface FabricDialogProps {
  readonly group: PatchGroup;
  readonly setup: CuttingSetup;
  /** Fabrics of which something is set aside for these projects: they stand first. */
  readonly heldFabrics: readonly FabricId[];
  readonly onChoose: (fabricId: FabricId | null) => void;
  readonly onClose: () => void;
}

/** Which fabric of the stash stands for a fabric of the list; arrow keys move among those found. */
export function FabricDialog({ group, setup, heldFabrics, onChoose, onClose }: FabricDialogProps) {
  const [search, setSearch] = useState('');
  const [chosen, setChosen] = useState<FabricId | null>(fabricOf(setup, group) ?? null);
  const { value: found } = useRead('fabric:list', { search, limit: 200 }, { keepsPrevious: true });
  const { length } = useDisplay();
  const name = useId();
  const isHeld = (fabric: Fabric) => heldFabrics.includes(fabric.id);
  const items = (found?.items ?? []).toSorted(
    (first, second) => Number(isHeld(second.fabric)) - Number(isHeld(first.fabric)),
  );
  const take = (fabricId: FabricId | null) => {
    onChoose(fabricId);
    onClose();
  };
  return (
    <Dialog
      title={`Fabric for ${group.fabric}`}
      isWide
      onClose={onClose}
      foot={
        <>
          <Button look="quiet" onClick={() => take(null)}>
            Plan it as new fabric
          </Button>
          <Button onClick={onClose}>Not now</Button>
          <Button look="main" disabled={chosen === null} onClick={() => take(chosen)}>
            Cut from it
          </Button>
        </>
      }
    >
      <TextField
        label="Find the fabric"
        help="Any words: name, color, print, shelf."
        value={search}
        onChange={setSearch}
        autoFocus
      />
      {items.length === 0 && found !== undefined && (
        <p className={styles['quiet']}>
          {search.trim() === ''
            ? 'There is no fabric in the stash yet.'
            : 'Nothing in the stash is called that.'}
        </p>
      )}
      <fieldset className={styles['options']}>
        <legend className={styles['quiet']}>Which fabric of the stash</legend>
        {items.map(({ fabric, pieces, areaFree }) => (
          <label key={fabric.id} className={styles['option']}>
            <input
              type="radio"
              name={name}
              checked={fabric.id === chosen}
              onChange={() => setChosen(fabric.id)}
            />
            <span className={styles['swatch']} style={{ background: fabric.swatch }} />
            <span className={styles['groupName']}>
              <strong>{fabric.name}</strong>
              <span className={styles['quiet']}>
                {fabric.place === '' ? 'no place noted' : fabric.place}
                {isHeld(fabric) && ', set aside for this'}
              </span>
            </span>
            <span className={classes(styles['quiet'], styles['right'])}>
              {pieces.length === 0
                ? 'used up'
                : `${counted(pieces.length, 'piece')}, ${formatArea(areaFree, length)} free`}
            </span>
          </label>
        ))}
      </fieldset>
    </Dialog>
  );
}

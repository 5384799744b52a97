import { useState } from 'react';
import type { ProjectId } from '#core/domain/ids';
import type { FabricDetails } from '#core/domain/stash';
import type { ShoppingLine } from '#core/stash/shopping/shopping-list';
import { holdsOfLine } from '#core/stash/shopping/shopping-lines';
import type { Length } from '#core/units/length';
import { useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { BoughtFields } from '#renderer/features/stash/bought-fields';
import { boughtPiece, emptyDraft, emptyPiece, type PieceDraft } from '#renderer/features/stash/fabric-draft';
import { PlaceField } from '#renderer/features/stash/place-field';
import styles from '#renderer/features/stash/stash.module.css';
import { today } from '#renderer/text/dates';
import { nameToBuy, type ShopEntry } from '#renderer/text/shopping-words';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

interface ShopBuyDialogProps {
  readonly entry: ShopEntry;
  readonly onClose: () => void;
}

/** Asks what was really bought and what it cost, and ticks the line off: what a piece needs of it is set aside at once. */
export function ShopBuyDialog({ entry, onClose }: ShopBuyDialogProps) {
  const { settings } = useWorkshop();
  const line = entry.kind === 'needed' ? entry.line : null;
  const [piece, setPiece] = useState<PieceDraft>(() => startOf(line));
  const [fabric, setFabric] = useState<FabricDetails>(() =>
    newFabric(entry, emptyDraft(line?.width ?? settings.fabricWidth, today()).fabric),
  );
  const [isHeld, setIsHeld] = useState(true);
  const buying = useWrite('shopping:buy');
  const removing = useWrite('shopping:remove');
  const known = line?.fabric ?? null;
  const projects = projectsOf(entry);
  const buy = async () => {
    const bought = boughtPiece(piece, today());
    if (bought === null) return;
    const answer = await buying.write({
      ...bought,
      lineId: entry.kind === 'own' ? entry.line.id : null,
      needs: (line?.shares ?? []).map(({ need: { projectId, source, name } }) => ({
        projectId,
        source,
        name,
      })),
      fabric: known === null ? { details: { ...fabric, place: piece.place } } : { fabricId: known.id },
      holds: isHeld ? holdsOf(entry, bought.size.length) : [],
      ...(known === null ? { place: '' } : {}),
    });
    if (answer.ok) onClose();
  };
  const tickOff = async () => {
    if (entry.kind !== 'own') return;
    const answer = await removing.write({ lineId: entry.line.id });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={`Bought: ${entry.kind === 'own' ? entry.line.words : nameToBuy(entry.line)}`}
      isWide
      onClose={onClose}
      foot={
        <>
          {entry.kind === 'own' && (
            <Button look="quiet" disabled={removing.isWriting} onClick={() => void tickOff()}>
              It does not go into the stash
            </Button>
          )}
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="shop-buy" disabled={buying.isWriting}>
            Tick it off
          </Button>
        </>
      }
    >
      <Form id="shop-buy" className={styles['stack']} onSubmit={() => void buy()}>
        {known === null && (
          <div className={styles['fields']}>
            <TextField
              label="What it is called"
              value={fabric.name}
              maximum={120}
              emptyProblem="Give it a name, so that it is found again."
              onChange={(name) => setFabric({ ...fabric, name })}
            />
            <TextField
              label="Shop"
              isOptional
              value={fabric.supplier}
              maximum={120}
              onChange={(supplier) => setFabric({ ...fabric, supplier })}
            />
          </div>
        )}
        <BoughtFields
          piece={piece}
          fabricWidth={line?.width ?? settings.fabricWidth}
          autoFocus
          onChange={setPiece}
        />
        <PlaceField
          label={known === null ? 'Where it lies' : 'Lies elsewhere'}
          value={piece.place}
          onChange={(place) => setPiece({ ...piece, place })}
        />
        {projects !== '' && (
          <Checkbox label={`Set it aside for ${projects}`} isChecked={isHeld} onChange={setIsHeld} />
        )}
      </Form>
      <ProblemNotice problem={buying.problem ?? removing.problem} />
    </Dialog>
  );
}

/** As the list says it; what was really bought may differ. */
function startOf(line: ShoppingLine | null): PieceDraft {
  const empty = emptyPiece(today());
  if (line === null) return empty;
  const { kind, width, length, count } = line;
  if (kind === 'thread') return { ...empty, kind, count };
  return { ...empty, kind, size: { width, length } };
}

function newFabric(entry: ShopEntry, usual: FabricDetails): FabricDetails {
  if (entry.kind === 'own') return { ...usual, name: entry.line.words, supplier: entry.line.supplier };
  const [share] = entry.line.shares;
  return share === undefined
    ? usual
    : { ...usual, name: `${nameToBuy(entry.line)} for ${share.need.projectName}` };
}

function projectsOf(entry: ShopEntry): string {
  if (entry.kind === 'own') return entry.line.projectName ?? '';
  return [...new Set(entry.line.shares.map(({ need }) => need.projectName))].join(', ');
}

/** A package or spool goes to its project whole; of a length each takes its share. */
function holdsOf(entry: ShopEntry, bought: Length) {
  if (entry.kind === 'needed' && entry.line.count === null) return holdsOfLine(entry.line.shares, bought);
  const projectId: ProjectId | null =
    entry.kind === 'own' ? entry.line.projectId : (entry.line.shares[0]?.need.projectId ?? null);
  return projectId === null ? [] : [{ projectId, length: bought }];
}

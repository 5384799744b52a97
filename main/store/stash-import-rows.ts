import type { FabricDetails } from '#core/domain/stash';
import type { PieceToAdd } from '#core/domain/stash-table';
import { addFabric } from './fabric-rows';
import { insertRow, type WritableStore } from './handles';
import { appendBooking } from './ledger-append';
import { notePrint } from './piece-prints';
import { layPiece } from './places';
import { addMany } from './shelf';
import { kindNamed } from './stash-kinds';

/** Pieces to be added to a fabric: a new one, or with `seq` one of the stash. */
export interface FabricToAdd {
  readonly details: FabricDetails;
  readonly pieces: readonly PieceToAdd[];
  readonly seq: number | null;
}

/** Adds fabrics with their pieces, each piece as bought on its day. */
export function addRows(store: WritableStore, fabrics: readonly FabricToAdd[]): void {
  addMany(store, () => fabrics.map((fabric) => addRow(store, fabric)));
}

function addRow(store: WritableStore, { details, pieces, seq }: FabricToAdd): number {
  const { newId } = store.surroundings;
  const fabricSeq = seq ?? addFabric(store, details).seq;
  for (const { kind, kindName, width, length, unitLength, place, printRuns, costMinor, on } of pieces) {
    const id = newId();
    const kindId = kindName === '' ? null : kindNamed(store, kind, kindName);
    const columns = { id, fabric_seq: fabricSeq, kind, kind_id: kindId, width, unit_length: unitLength };
    const pieceSeq = insertRow(store, 'cloth_piece', columns);
    if (printRuns === 'across') notePrint(store, id, printRuns);
    if (place !== '') layPiece(store, id, place);
    const entry = { lengthChange: length, heldChange: 0, valueChange: costMinor } as const;
    appendBooking(store, { fabricSeq, projectSeq: null, stage: null, note: '', on }, [
      { pieceSeq, kind: 'bought', ...entry },
    ]);
  }
  return fabricSeq;
}

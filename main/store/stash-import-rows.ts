import type { FabricDetails } from '#core/domain/stash';
import type { PieceToAdd } from '#core/domain/stash-table';
import { addFabrics } from './fabric-rows';
import { insertRows, nextSeq, type WritableStore } from './handles';
import { appendBookings } from './ledger-append';
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
  addMany(store, () => {
    const added = addFabrics(
      store,
      fabrics.filter(({ seq }) => seq === null).map(({ details }) => details),
    ).values();
    const numbered = fabrics.map(({ seq, pieces }) => ({
      fabricSeq: seq ?? added.next().value?.seq ?? 0,
      pieces,
    }));
    addPieces(
      store,
      numbered.flatMap(({ fabricSeq, pieces }) => pieces.map((piece) => ({ fabricSeq, piece }))),
    );
    return numbered.map(({ fabricSeq }) => fabricSeq);
  });
}

function addPieces(
  store: WritableStore,
  pieces: readonly { readonly fabricSeq: number; readonly piece: PieceToAdd }[],
): void {
  const first = nextSeq(store, 'cloth_piece');
  const ids = pieces.map(() => store.surroundings.newId());
  const rows = pieces.map(({ fabricSeq, piece: { kind, kindName, width, unitLength } }, index) => {
    const kindId = kindName === '' ? null : kindNamed(store, kind, kindName);
    return [first + index, ids[index] ?? '', fabricSeq, kind, kindId, width, unitLength];
  });
  insertRows(
    store,
    'cloth_piece',
    ['seq', 'id', 'fabric_seq', 'kind', 'kind_id', 'width', 'unit_length'],
    rows,
  );
  pieces.forEach(({ piece }, index) => {
    const id = ids[index] ?? '';
    if (piece.printRuns === 'across') notePrint(store, id, piece.printRuns);
    if (piece.place !== '') layPiece(store, id, piece.place);
  });
  const bought = pieces.map(({ fabricSeq, piece: { length, costMinor, on } }, index) => {
    const entry = { lengthChange: length, heldChange: 0, valueChange: costMinor } as const;
    return {
      booking: { fabricSeq, projectSeq: null, stage: null, note: '', on },
      entries: [{ pieceSeq: first + index, kind: 'bought', ...entry } as const],
    };
  });
  appendBookings(store, bought);
}

import type { FabricDetails } from '#core/domain/stash';
import type { PieceToAdd } from '#core/domain/stash-table';
import { addFabrics } from '../stash/fabric-rows';
import { insertRows, nextSeq, type WritableStore } from '../base/handles';
import { appendBookings } from '../ledger/ledger-append';
import { setPrintDirection } from '../stash/print-directions';
import { storePiece } from '../stash/places';
import { bulkInsert } from '../stash/bulk-insert';
import { kindNamed } from '../stash/stash-kinds';

/** Pieces to add to a fabric: one of the stash if it has a `seq`, otherwise a new one. */
export interface FabricToAdd {
  readonly details: FabricDetails;
  readonly pieces: readonly PieceToAdd[];
  readonly seq: number | null;
}

/** Fabrics added at a time: a batch is small enough that its memory is freed at once. */
const FABRICS_AT_ONCE = 1_000;

/** Adds fabrics with their pieces, each piece as bought on its own day. */
export function addRows(store: WritableStore, fabrics: readonly FabricToAdd[]): void {
  bulkInsert(store, () => {
    const seqs: number[] = [];
    for (let first = 0; first < fabrics.length; first += FABRICS_AT_ONCE) {
      seqs.push(...addSome(store, fabrics.slice(first, first + FABRICS_AT_ONCE)));
    }
    return seqs;
  });
}

function addSome(store: WritableStore, fabrics: readonly FabricToAdd[]): readonly number[] {
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
}

function addPieces(
  store: WritableStore,
  pieces: readonly { readonly fabricSeq: number; readonly piece: PieceToAdd }[],
): void {
  const first = nextSeq(store, 'fabric_piece');
  const added = pieces.map(({ fabricSeq, piece }, index) => ({
    seq: first + index,
    id: store.clockAndIds.newId(),
    fabricSeq,
    piece,
    kindId: piece.kindName === '' ? null : kindNamed(store, piece.kind, piece.kindName),
  }));
  const columns = ['seq', 'id', 'fabric_seq', 'kind', 'kind_id', 'width', 'unit_length'];
  const rows = added.map(({ seq, id, fabricSeq, kindId, piece: { kind, width, unitLength } }) => [
    seq,
    id,
    fabricSeq,
    kind,
    kindId,
    width,
    unitLength,
  ]);
  insertRows(store, 'fabric_piece', columns, rows);
  for (const { id, piece } of added) {
    if (piece.printRuns === 'across') setPrintDirection(store, id, piece.printRuns);
    if (piece.place !== '') storePiece(store, id, piece.place);
  }
  const bought = added.map(({ seq, fabricSeq, piece: { length, costMinor, on } }) => ({
    booking: { fabricSeq, projectSeq: null, stage: null, note: '', on },
    entries: [
      { pieceSeq: seq, kind: 'bought', lengthChange: length, heldChange: 0, valueChange: costMinor } as const,
    ],
  }));
  appendBookings(store, bought);
}

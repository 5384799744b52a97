import type { ChannelInput } from '#core/contract/channels';
import type { PieceWithCode } from '#core/contract/stash';
import { idBeginning } from '#core/stash/piece-code';
import { FABRICS, fabricOf, pieceOf, PIECES_OF_FABRIC } from './fabric-rows';
import { allRows, oneRow, type ReadableStore } from '../base/handles';
import { textOf } from '../base/rows';

/** The pieces whose id begins as the code says, found by the index of ids. `g` sorts after every hexadecimal digit and the hyphen. */
export function piecesWithCode(
  store: ReadableStore,
  { code }: ChannelInput<'piece:find'>,
): readonly PieceWithCode[] {
  const beginning = idBeginning(code);
  const sql = `${PIECES_OF_FABRIC} WHERE fabric_piece.id >= ? AND fabric_piece.id < ? AND deleted_at IS NULL ORDER BY fabric_piece.seq`;
  return allRows(store, sql, beginning, `${beginning}g`).flatMap((row) => {
    const fabric = oneRow(store, `${FABRICS} WHERE fabric.id = ?`, textOf(row, 'fabric_id'));
    return fabric === undefined ? [] : [{ piece: pieceOf(row), fabric: fabricOf(fabric) }];
  });
}

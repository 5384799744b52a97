import type { ChannelInput } from '#core/contract/channels';
import type { CodedPiece } from '#core/contract/stash';
import { idBeginning } from '#core/stash/piece-code';
import { FABRICS, fabricOf, pieceOf, PIECES } from './fabric-rows';
import { allRows, oneRow, type ReadableStore } from '../base/handles';
import { textOf } from '../base/rows';

/** Ids are found by how they begin, in the order of their index; of hexadecimal digits and hyphens none comes after a `g`. */
export function piecesWithCode(
  store: ReadableStore,
  { code }: ChannelInput<'piece:find'>,
): readonly CodedPiece[] {
  const beginning = idBeginning(code);
  const sql = `${PIECES} WHERE fabric_piece.id >= ? AND fabric_piece.id < ? AND deleted_at IS NULL ORDER BY fabric_piece.seq`;
  return allRows(store, sql, beginning, `${beginning}g`).flatMap((row) => {
    const fabric = oneRow(store, `${FABRICS} WHERE fabric.id = ?`, textOf(row, 'fabric_id'));
    return fabric === undefined ? [] : [{ piece: pieceOf(row), fabric: fabricOf(fabric) }];
  });
}

import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { PrintRuns } from '#core/domain/stash';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { type ReadableStore, type WritableStore, write } from '../base/handles';
import { findPiece } from '../base/lookups';

export function changePrintDirection(
  store: ReadableStore,
  { pieceId, runs }: ChannelInput<'piece:set-print'>,
): Result<Changed, Problem> {
  const piece = findPiece(store, pieceId);
  if (!piece.ok) return piece;
  const words = `Set the print direction of a piece of “${piece.value.fabric.name}”`;
  return recordChange(store, words, (writable) => {
    setPrintDirection(writable, pieceId, runs);
    return success({});
  });
}

/** Stores which way the print of a piece runs. Only `across` has a row. */
export function setPrintDirection(store: WritableStore, pieceId: string, runs: PrintRuns): void {
  if (runs === 'along') {
    write(store, 'DELETE FROM piece_print WHERE id = ?', pieceId);
    return;
  }
  const note = `INSERT INTO piece_print (id, runs) VALUES (?, ?)
    ON CONFLICT (id) DO UPDATE SET runs = excluded.runs`;
  write(store, note, pieceId, runs);
}

/** The print direction of a leftover that is turned against the piece it came from. */
export function turnedPrint(runs: PrintRuns): PrintRuns {
  return runs === 'along' ? 'across' : 'along';
}

import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { PrintRuns } from '#core/domain/stash';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import type { ReadableStore, WritableStore } from '../base/handles';
import { write } from '../base/handles';
import { findPiece } from '../base/lookups';

export function setPiecePrint(
  store: ReadableStore,
  { pieceId, runs }: ChannelInput<'piece:set-print'>,
): Result<Changed, Problem> {
  const piece = findPiece(store, pieceId);
  if (!piece.ok) return piece;
  const words = `Said that the print runs ${runs} a piece of “${piece.value.fabric.name}”`;
  return recordChange(store, words, (writable) => {
    notePrint(writable, pieceId, runs);
    return success({});
  });
}

/** Notes which way the print of a piece runs; along is what is taken for granted. */
export function notePrint(store: WritableStore, pieceId: string, runs: PrintRuns): void {
  if (runs === 'along') {
    write(store, 'DELETE FROM piece_print WHERE id = ?', pieceId);
    return;
  }
  const note = `INSERT INTO piece_print (id, runs) VALUES (?, ?)
    ON CONFLICT (id) DO UPDATE SET runs = excluded.runs`;
  write(store, note, pieceId, runs);
}

/** The other way: for a leftover that lies turned to the piece it came from. */
export function turnedPrint(runs: PrintRuns): PrintRuns {
  return runs === 'along' ? 'across' : 'along';
}

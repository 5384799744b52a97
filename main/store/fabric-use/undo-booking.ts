import type { ChannelInput } from '#core/contract/channels';
import type { Problem, UndoRefusal } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { allRows, oneRow, type ReadableStore, type Row } from '../base/handles';
import { appendUndo } from '../ledger/ledger-append';
import { BOOKING_IS_ACTIVE } from '../ledger/ledger-sql';
import { notFound } from '../base/lookups';
import { flagOf, numberOf, textOf } from '../base/rows';

/** Undoes a booking together with its leftovers. Refused if its fabric has been used since. */
export function undoBooking(
  store: ReadableStore,
  { bookingId, on }: ChannelInput<'ledger:undo'>,
): Result<Changed, Problem> {
  const booking = oneRow(
    store,
    `SELECT booking.seq, fabric.name, booking.takes_back IS NULL AND ${BOOKING_IS_ACTIVE} AS can_be_undone,
      fabric.deleted_at IS NOT NULL AS is_fabric_deleted
    FROM booking JOIN fabric ON fabric.seq = fabric_seq
    WHERE booking.id = ?`,
    bookingId,
  );
  if (booking === undefined || flagOf(booking, 'is_fabric_deleted')) return notFound('booking');
  if (!flagOf(booking, 'can_be_undone')) return failure<Problem>({ code: 'already-undone' });
  const seq = numberOf(booking, 'seq');
  const refusal = undoRefusal(store, seq);
  if (refusal !== null) return failure<Problem>(refusal);
  return recordChange(store, `Undid a ledger entry of “${textOf(booking, 'name')}”`, (writable) => {
    appendUndo(writable, seq, on);
    return success({});
  });
}

/** Why an active booking cannot be undone; null if it can. */
export function undoRefusal(store: ReadableStore, bookingSeq: number): UndoRefusal | null {
  const rows = allRows(
    store,
    `SELECT entry.kind, entry.length_change, entry.held_change, entry.value_change, there, held, value_minor,
      EXISTS (SELECT 1 FROM project WHERE project.seq = booking.project_seq AND deleted_at IS NOT NULL)
        AS is_project_deleted,
      (SELECT coalesce(sum(held), 0) FROM piece_hold
        WHERE piece_hold.piece_seq = entry.piece_seq AND project_seq = booking.project_seq) AS own_hold
    FROM ledger_entry AS entry JOIN booking ON booking.seq = entry.booking_seq
    JOIN piece_sum ON piece_sum.piece_seq = entry.piece_seq WHERE entry.booking_seq = ?`,
    bookingSeq,
  );
  for (const row of rows) {
    const refusal = refusalOfEntry(row);
    if (refusal !== null) return refusal;
  }
  return null;
}

/** Looks at the sums as they would be without the entry. */
function refusalOfEntry(row: Row): UndoRefusal | null {
  const number = (column: string): number => numberOf(row, column);
  const there = number('there') - number('length_change');
  const ownHold = number('own_hold') - number('held_change');
  const isPriced = row['value_minor'] !== null;
  const value = isPriced ? number('value_minor') - number('value_change') : 0;
  if (row['kind'] === 'leftover' && (there !== 0 || number('held') > 0 || value !== 0)) {
    return { code: 'leftover-used' };
  }
  if (there < 0) return { code: 'fabric-used-since' };
  if (number('length_change') > 0 && there < number('held')) return { code: 'fabric-set-aside' };
  if (ownHold < 0) return { code: 'hold-gone' };
  if (value < 0 || (there === 0 && value > 0)) return { code: 'value-moved' };
  if (flagOf(row, 'is_project_deleted') && number('held_change') < 0) return { code: 'project-deleted' };
  return null;
}

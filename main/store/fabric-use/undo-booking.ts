import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { allRows, oneRow, type ReadableStore, type Row } from '../base/handles';
import { appendTakeBack } from '../ledger/ledger-append';
import { notFound } from '../base/lookups';
import { flagOf, numberOf, textOf } from '../base/rows';

/**
 * Takes a booking back in one step, with all its leftovers, as if it had never been. Refused when the fabric has been used
 * since: a leftover that was cut, or fabric that is no longer there to give back.
 */
export function takeBack(
  store: ReadableStore,
  { bookingId, on }: ChannelInput<'ledger:take-back'>,
): Result<Changed, Problem> {
  const booking = oneRow(
    store,
    `SELECT booking.seq, fabric.name, booking.takes_back IS NOT NULL
        OR EXISTS (SELECT 1 FROM booking AS later WHERE later.takes_back = booking.seq) AS is_done,
      fabric.deleted_at IS NOT NULL AS is_fabric_deleted
    FROM booking JOIN fabric ON fabric.seq = fabric_seq
    WHERE booking.id = ?`,
    bookingId,
  );
  if (booking === undefined || flagOf(booking, 'is_fabric_deleted')) return notFound('booking');
  if (flagOf(booking, 'is_done')) return failure<Problem>({ code: 'already-taken-back' });
  const seq = numberOf(booking, 'seq');
  const inWay = whatIsInTheWay(store, seq);
  if (inWay !== null) return failure<Problem>({ code: 'in-use', what: inWay });
  return recordChange(store, `Took back a booking of “${textOf(booking, 'name')}”`, (writable) => {
    appendTakeBack(writable, seq, on);
    return success({});
  });
}

/** What keeps a standing booking from being taken back, in words; null where nothing does. */
export function whatIsInTheWay(store: ReadableStore, bookingSeq: number): string | null {
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
    const inWay = whyNotBack(row);
    if (inWay !== null) return inWay;
  }
  return null;
}

function whyNotBack(row: Row): string | null {
  const number = (column: string): number => numberOf(row, column);
  const there = number('there') - number('length_change');
  const ownHold = number('own_hold') - number('held_change');
  const value = number('value_minor') - number('value_change');
  if (row['kind'] === 'leftover' && (there !== 0 || number('held') > 0 || value !== 0)) {
    return 'a leftover of this cut, which is no longer whole and free';
  }
  if (there < 0) return 'the fabric of this booking, which has been used since';
  if (number('length_change') > 0 && there < number('held'))
    return 'the fabric of this booking, which is set aside';
  if (ownHold < 0) return 'the fabric set aside by this booking, which is no longer held';
  if (value < 0 || (there === 0 && value > 0)) return 'the value of this fabric, which has moved on since';
  if (flagOf(row, 'is_project_deleted') && number('held_change') < 0)
    return 'the project it was set aside for, which is deleted';
  return null;
}

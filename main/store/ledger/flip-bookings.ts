import { appendRedo, appendUndo, bookingRow, activeBooking } from './ledger-append';
import { allRows, type WritableStore, write } from '../base/handles';
import { numberOf, numberOrNullOf } from '../base/rows';

/** Books the opposite of what a change booked, the last first. The new bookings replace the old ones in the change, so flipping again is redo. */
export function flipBookings(store: WritableStore, changeSeq: number): void {
  const rows = allRows(
    store,
    'SELECT booking_seq FROM change_booking WHERE change_seq = ? ORDER BY booking_seq DESC',
    changeSeq,
  );
  write(store, 'DELETE FROM change_booking WHERE change_seq = ?', changeSeq);
  for (const row of rows) bookOpposite(store, numberOf(row, 'booking_seq'));
}

function bookOpposite(store: WritableStore, bookingSeq: number): void {
  const undoes = numberOrNullOf(bookingRow(store, bookingSeq), 'takes_back');
  if (undoes !== null) {
    appendRedo(store, undoes);
    return;
  }
  const active = activeBooking(store, bookingSeq);
  if (active === null) throw new Error(`Booking ${bookingSeq} is undone already`);
  appendUndo(store, active, store.clockAndIds.today());
}

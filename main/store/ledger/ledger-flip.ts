import { appendAgain, appendTakeBack, bookingRow, standingBooking } from './ledger-append';
import { allRows, type WritableStore, write } from '../base/handles';
import { numberOf, numberOrNullOf } from '../base/rows';

/** Books the opposite of what a change booked, the last first; what that books is the change's from now on. */
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
  const takesBack = numberOrNullOf(bookingRow(store, bookingSeq), 'takes_back');
  if (takesBack !== null) {
    appendAgain(store, takesBack);
    return;
  }
  const standing = standingBooking(store, bookingSeq);
  if (standing === null) throw new Error(`Booking ${bookingSeq} was taken back already`);
  appendTakeBack(store, standing, store.surroundings.today());
}

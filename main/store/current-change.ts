import { type WritableStore, writeOne } from './handles';

/** Runs `work` as part of a change, whose triggers record what it does. An exception leaves the change current, but the transaction is rolled back with it. */
export function duringChange<Answer>(store: WritableStore, seq: number, work: () => Answer): Answer {
  writeOne(store, 'UPDATE current_change SET change_seq = ? WHERE change_seq IS NULL', seq);
  const answer = work();
  writeOne(store, 'UPDATE current_change SET change_seq = NULL');
  return answer;
}

/** Bookings made during a change belong to it: undoing it books their opposite. */
export function addBookingToChange(store: WritableStore, bookingSeq: number): void {
  writeOne(
    store,
    'INSERT INTO change_booking (change_seq, booking_seq) SELECT change_seq, ? FROM current_change',
    bookingSeq,
  );
}

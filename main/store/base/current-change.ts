import { type WritableStore, write, writeOne } from './handles';

/** Runs `work` as part of a change, so that the triggers record it. After an exception the change stays current, but the transaction is rolled back. */
export function duringChange<Answer>(store: WritableStore, seq: number, work: () => Answer): Answer {
  writeOne(store, 'UPDATE current_change SET change_seq = ? WHERE change_seq IS NULL', seq);
  const answer = work();
  writeOne(store, 'UPDATE current_change SET change_seq = NULL');
  return answer;
}

/** Adds bookings to the current change. Undoing the change books their opposite. */
export function addBookingsToChange(store: WritableStore, bookingSeqs: readonly number[]): void {
  const sql = `INSERT INTO change_booking (change_seq, booking_seq)
    SELECT change_seq, value FROM current_change CROSS JOIN json_each(?)`;
  const added = write(store, sql, JSON.stringify(bookingSeqs));
  if (added !== bookingSeqs.length) throw new Error('A booking belongs to one change');
}

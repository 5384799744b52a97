import { type WritableStore, write, writeOne } from './handles';

/** Runs `work` as part of a change, whose triggers record what it does. An exception leaves the change current, but the transaction is rolled back with it. */
export function duringChange<Answer>(store: WritableStore, seq: number, work: () => Answer): Answer {
  writeOne(store, 'UPDATE current_change SET change_seq = ? WHERE change_seq IS NULL', seq);
  const answer = work();
  writeOne(store, 'UPDATE current_change SET change_seq = NULL');
  return answer;
}

/** Bookings made during a change belong to it: undoing it books their opposite. */
export function addBookingsToChange(store: WritableStore, bookingSeqs: readonly number[]): void {
  const sql = `INSERT INTO change_booking (change_seq, booking_seq)
    SELECT change_seq, value FROM current_change CROSS JOIN json_each(?)`;
  const added = write(store, sql, JSON.stringify(bookingSeqs));
  if (added !== bookingSeqs.length) throw new Error('A booking belongs to one change');
}

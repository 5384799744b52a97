/** A row of `booking` is active while no later booking undoes it. */
export const BOOKING_IS_ACTIVE =
  'NOT EXISTS (SELECT 1 FROM booking AS later WHERE later.takes_back = booking.seq)';

/** A ledger entry named `entry` is active while no later entry reverses it. */
export const ENTRY_IS_ACTIVE =
  'NOT EXISTS (SELECT 1 FROM ledger_entry AS later WHERE later.reverses = entry.seq)';

/** The free length of a row of `piece_sum`, as `freeOf` works it out. */
export const FREE_LENGTH = 'max(0, there - held)';

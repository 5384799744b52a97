import type { Migration } from './migration';

/**
 * A booking says whether the maker knew that she spoke for more than there is; no other may make a shortage larger.
 * What was booked before this step was asked about then, so it counts as known.
 */
const KNOWING_SQL = `
ALTER TABLE booking ADD COLUMN is_knowing INTEGER NOT NULL DEFAULT 0 CHECK (is_knowing IN (0, 1));
DROP TRIGGER booking_never_update;
UPDATE booking SET is_knowing = 1;
CREATE TRIGGER booking_never_update BEFORE UPDATE ON booking
BEGIN SELECT RAISE(ABORT, 'The ledger is never edited'); END;

CREATE TRIGGER ledger_entry_knowing BEFORE INSERT ON ledger_entry
WHEN NEW.kind IN ('set-aside', 'cut', 'discarded') AND NEW.held_change > NEW.length_change BEGIN
  SELECT RAISE(ABORT, 'Spoken for already')
    FROM piece_sum JOIN booking ON booking.seq = NEW.booking_seq
    WHERE piece_seq = NEW.piece_seq AND is_knowing = 0
      AND there + NEW.length_change BETWEEN 0 AND held + NEW.held_change - 1;
END;
`;

const PRICE_SQL = `
CREATE TABLE fabric_price (
  id TEXT PRIMARY KEY NOT NULL,
  fabric_id TEXT NOT NULL UNIQUE REFERENCES fabric (id) ON DELETE CASCADE,
  price_minor INTEGER NOT NULL CHECK (price_minor > 0),
  for_length INTEGER NOT NULL CHECK (for_length > 0)
) STRICT;
`;

export const knowingBookings: Migration = {
  version: 30,
  says: 'Whether a booking knew that it spoke for too much, and what a fabric costs to buy again',
  apply: (database) => {
    for (const sql of [KNOWING_SQL, PRICE_SQL]) database.exec(sql);
  },
};

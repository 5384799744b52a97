import { SHELF_SQL } from './0210-shelf';
import type { Migration } from './migration';
import { rebuildTable } from './rebuild-table';

/** The triggers that are made anew. */
const DROPPED_SQL = `
DROP TRIGGER ledger_adds_up;
DROP TRIGGER ledger_entry_fits;
DROP TRIGGER ledger_entry_never_update;
DROP TRIGGER piece_sum_true_on_insert;
DROP TRIGGER piece_sum_true_on_update;
DROP TRIGGER first_in_forgotten;
`;

/** A purchase can be of a day, a month or a year, or of no known day. */
const BOOKING_SQL = `CREATE TABLE booking (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  fabric_seq INTEGER NOT NULL REFERENCES fabric (seq),
  project_seq INTEGER REFERENCES project (seq),
  stage_id TEXT,
  stage_name TEXT,
  takes_back INTEGER UNIQUE REFERENCES booking (seq),
  books_again INTEGER REFERENCES booking (seq),
  note TEXT NOT NULL,
  on_date TEXT CHECK (on_date IS NULL OR on_date GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'
    OR on_date GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]' OR on_date GLOB '[0-9][0-9][0-9][0-9]'),
  recorded_at INTEGER NOT NULL,
  is_knowing INTEGER NOT NULL DEFAULT 0 CHECK (is_knowing IN (0, 1)),
  CHECK ((stage_id IS NULL) = (stage_name IS NULL)),
  CHECK (stage_id IS NULL OR project_seq IS NOT NULL),
  CHECK (takes_back IS NULL OR books_again IS NULL)
) STRICT`;

/** A change of value is null if it is not known what the piece cost. */
const ENTRY_SQL = `CREATE TABLE ledger_entry (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  booking_seq INTEGER NOT NULL REFERENCES booking (seq),
  piece_seq INTEGER NOT NULL REFERENCES fabric_piece (seq),
  kind TEXT NOT NULL,
  length_change INTEGER NOT NULL,
  held_change INTEGER NOT NULL,
  value_change INTEGER,
  reverses INTEGER UNIQUE REFERENCES ledger_entry (seq),
  CHECK ((kind = 'taken-back') = (reverses IS NOT NULL)),
  CHECK (CASE kind
    WHEN 'bought' THEN length_change > 0 AND held_change = 0 AND coalesce(value_change, 0) >= 0
    WHEN 'set-aside' THEN length_change = 0 AND held_change > 0 AND value_change IS 0
    WHEN 'released' THEN length_change = 0 AND held_change < 0 AND value_change IS 0
    WHEN 'cut' THEN length_change < 0 AND held_change BETWEEN length_change AND 0 AND coalesce(value_change, 0) <= 0
    WHEN 'leftover' THEN length_change > 0 AND held_change = 0 AND coalesce(value_change, 0) >= 0
    WHEN 'discarded' THEN length_change < 0 AND held_change = 0 AND coalesce(value_change, 0) <= 0
    WHEN 'counted' THEN held_change = 0 AND coalesce(value_change, 0) <= 0
    WHEN 'taken-back' THEN 1
    ELSE 0
  END)
) STRICT`;

const SUM_SQL = `CREATE TABLE piece_sum (
  piece_seq INTEGER PRIMARY KEY REFERENCES fabric_piece (seq),
  there INTEGER NOT NULL CHECK (there >= 0),
  held INTEGER NOT NULL CHECK (held >= 0),
  value_minor INTEGER CHECK (value_minor >= 0),
  CHECK (there > 0 OR coalesce(value_minor, 0) = 0)
) STRICT`;

/**
 * Until now a blank cost was booked as 0. A leftover of fabric without a cost has none either; one of fabric with a cost can be worth 0 by
 * rounding, and keeps it.
 */
const UNKNOWN_SQL = `
CREATE TEMP TABLE unpriced AS
  WITH RECURSIVE unpriced (piece_seq) AS (
    SELECT piece_seq FROM ledger_entry WHERE kind = 'bought' AND value_change = 0
    UNION
    SELECT leftover.piece_seq FROM unpriced
      JOIN ledger_entry AS cut ON cut.piece_seq = unpriced.piece_seq AND cut.kind = 'cut'
      JOIN ledger_entry AS leftover ON leftover.booking_seq = cut.booking_seq AND leftover.kind = 'leftover'
  )
  SELECT piece_seq FROM unpriced;
UPDATE ledger_entry SET value_change = NULL
  WHERE piece_seq IN (SELECT piece_seq FROM unpriced)
    AND coalesce((SELECT was.kind FROM ledger_entry AS was WHERE was.seq = ledger_entry.reverses), kind)
      NOT IN ('set-aside', 'released');
UPDATE piece_sum SET value_minor = NULL WHERE piece_seq IN (SELECT piece_seq FROM unpriced);

ALTER TABLE project_use ADD COLUMN unpriced_area INTEGER NOT NULL DEFAULT 0;
ALTER TABLE project_use ADD COLUMN first_in_unpriced INTEGER;
UPDATE project_use SET first_in_minor = NULL, unpriced_area = coalesce((
  SELECT -sum(entry.length_change * fabric_piece.width)
  FROM booking JOIN ledger_entry AS entry ON entry.booking_seq = booking.seq
    JOIN fabric_piece ON fabric_piece.seq = entry.piece_seq
  WHERE booking.project_seq = project_use.project_seq AND booking.fabric_seq = project_use.fabric_seq
    AND entry.value_change IS NULL), 0);
DROP TABLE unpriced;
`;

/** The value of a piece is null as soon as one of its entries is. */
const TOTALS = `(SELECT sum(length_change), sum(held_change), CASE WHEN total(value_change IS NULL) = 0 THEN sum(value_change) END
    FROM ledger_entry WHERE piece_seq = NEW.piece_seq)`;
const SUMS = '(SELECT there, held, value_minor FROM piece_sum WHERE piece_seq = NEW.piece_seq)';
const BOOKING = 'FROM booking WHERE seq = NEW.booking_seq';
const IS_UNPRICED = '(NEW.value_change IS NULL)';

const LEDGER_SQL = `
CREATE TRIGGER ledger_entry_never_update BEFORE UPDATE ON ledger_entry
BEGIN SELECT RAISE(ABORT, 'The ledger is never edited'); END;

CREATE TRIGGER ledger_entry_fits BEFORE INSERT ON ledger_entry BEGIN
  SELECT RAISE(ABORT, 'This was taken back already')
    WHERE NEW.reverses IS NOT NULL AND EXISTS (SELECT 1 FROM ledger_entry WHERE reverses = NEW.reverses);
  SELECT RAISE(ABORT, 'The piece is of another fabric than the booking')
    WHERE (SELECT fabric_seq FROM fabric_piece WHERE seq = NEW.piece_seq)
      IS NOT (SELECT fabric_seq ${BOOKING});
  SELECT RAISE(ABORT, 'Cloth is held for a project, or not at all')
    WHERE NEW.held_change <> 0 AND (SELECT project_seq ${BOOKING}) IS NULL;
  SELECT RAISE(ABORT, 'Only a purchase is of no known day')
    WHERE NEW.kind <> 'bought' AND (SELECT length(on_date) ${BOOKING}) IS NOT 10;
  SELECT RAISE(ABORT, 'Of a piece whose cost is not known no value is known, and the other way round')
    FROM piece_sum WHERE piece_seq = NEW.piece_seq AND NEW.length_change <> 0
      AND (value_minor IS NULL) <> ${IS_UNPRICED};
  SELECT RAISE(ABORT, 'What is taken back must be the opposite of what was booked')
    WHERE NEW.reverses IS NOT NULL AND NOT EXISTS (
      SELECT 1 FROM ledger_entry AS was
      JOIN booking AS now_booking ON now_booking.seq = NEW.booking_seq AND now_booking.takes_back = was.booking_seq
      WHERE was.seq = NEW.reverses AND was.kind <> 'taken-back' AND was.piece_seq = NEW.piece_seq
        AND was.length_change = -NEW.length_change AND was.held_change = -NEW.held_change
        AND was.value_change IS -NEW.value_change);
END;

CREATE TRIGGER ledger_adds_up AFTER INSERT ON ledger_entry BEGIN
  UPDATE piece_sum SET there = there + NEW.length_change, held = held + NEW.held_change,
    value_minor = value_minor + NEW.value_change WHERE piece_seq = NEW.piece_seq;
  INSERT INTO piece_sum (piece_seq, there, held, value_minor)
    SELECT NEW.piece_seq, NEW.length_change, NEW.held_change, NEW.value_change
    WHERE NOT EXISTS (SELECT 1 FROM piece_sum WHERE piece_seq = NEW.piece_seq);

  UPDATE piece_hold SET held = held + NEW.held_change
    WHERE piece_seq = NEW.piece_seq AND NEW.held_change <> 0
      AND project_seq = (SELECT project_seq ${BOOKING});
  INSERT INTO piece_hold (project_seq, piece_seq, held)
    SELECT project_seq, NEW.piece_seq, NEW.held_change ${BOOKING} AND NEW.held_change <> 0 AND NOT EXISTS (
      SELECT 1 FROM piece_hold AS known
      WHERE known.piece_seq = NEW.piece_seq AND known.project_seq = booking.project_seq);

  INSERT INTO project_use (project_seq, fabric_seq, area, cost_minor)
    SELECT booking.project_seq, booking.fabric_seq, 0, 0 ${BOOKING} AND booking.project_seq IS NOT NULL
      AND (NEW.length_change <> 0 OR NEW.value_change <> 0) AND NOT EXISTS (
        SELECT 1 FROM project_use AS known
        WHERE known.project_seq = booking.project_seq AND known.fabric_seq = booking.fabric_seq);
  UPDATE project_use SET
    area = area - NEW.length_change * (SELECT width FROM fabric_piece WHERE seq = NEW.piece_seq),
    cost_minor = cost_minor - coalesce(NEW.value_change, 0),
    unpriced_area = unpriced_area
      - ${IS_UNPRICED} * NEW.length_change * (SELECT width FROM fabric_piece WHERE seq = NEW.piece_seq)
    WHERE (project_seq, fabric_seq) = (SELECT project_seq, fabric_seq ${BOOKING})
      AND (NEW.length_change <> 0 OR NEW.value_change <> 0);

  SELECT RAISE(ABORT, 'More than there is') WHERE ${TOTALS} IS NOT ${SUMS}
    OR (NEW.held_change <> 0 AND (SELECT sum(held_change) FROM ledger_entry JOIN booking ON booking.seq = ledger_entry.booking_seq
      WHERE piece_seq = NEW.piece_seq AND project_seq = (SELECT project_seq ${BOOKING}))
    IS NOT (SELECT held FROM piece_hold WHERE piece_seq = NEW.piece_seq AND project_seq = (SELECT project_seq ${BOOKING})));
END;

CREATE TRIGGER piece_sum_true_on_insert AFTER INSERT ON piece_sum WHEN ${TOTALS} IS NOT ${SUMS}
BEGIN SELECT RAISE(ABORT, 'Not what the ledger says of this piece'); END;
CREATE TRIGGER piece_sum_true_on_update AFTER UPDATE ON piece_sum WHEN ${TOTALS} IS NOT ${SUMS}
BEGIN SELECT RAISE(ABORT, 'Not what the ledger says of this piece'); END;

CREATE TRIGGER first_in_forgotten AFTER INSERT ON booking BEGIN
  UPDATE project_use SET first_in_minor = NULL, first_in_unpriced = NULL
    WHERE fabric_seq = NEW.fabric_seq AND first_in_minor IS NOT NULL;
END;
`;

export const unknownCost: Migration = {
  version: 210,
  says: 'What fabric cost and when it was bought can be not known',
  apply: (database) => {
    database.exec(DROPPED_SQL);
    rebuildTable(database, 'booking', BOOKING_SQL);
    rebuildTable(database, 'ledger_entry', ENTRY_SQL);
    rebuildTable(database, 'piece_sum', SUM_SQL);
    for (const sql of [UNKNOWN_SQL, LEDGER_SQL, SHELF_SQL]) database.exec(sql);
  },
};

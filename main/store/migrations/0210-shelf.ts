import { BIT_OF_FORM } from './0090-shelf';

const PURCHASES = `FROM fabric_piece INDEXED BY piece_of_fabric
      CROSS JOIN ledger_entry AS entry INDEXED BY entry_bought ON entry.piece_seq = fabric_piece.seq AND entry.kind = 'bought'
      JOIN booking ON booking.seq = entry.booking_seq
    WHERE fabric_piece.fabric_seq = fabric.seq
      AND NOT EXISTS (SELECT 1 FROM ledger_entry AS later WHERE later.reverses = entry.seq)`;

/** The day it was entered, if the fabric has no purchase. */
const boughtOn = (
  day: string,
): string => `CASE WHEN EXISTS (SELECT 1 ${PURCHASES}) THEN (SELECT ${day} ${PURCHASES})
      ELSE date(fabric.created_at / 1000, 'unixepoch') END`;

/** A month or year may reach from its first day to its last; sorted as text, 99 comes after both. */
const FIRST_DAY = "min(substr(on_date || '-01-01', 1, 10))";
const LAST_DAY = "max(substr(on_date || '-99-99', 1, 10))";

const PIECES =
  'FROM fabric_piece JOIN piece_sum ON piece_seq = fabric_piece.seq WHERE fabric_seq = fabric.seq';

/** The rate of what was paid counts only fabric whose cost is known. */
export const SHELF_SQL = `
DROP VIEW shelf_line;
DROP TABLE shelf;
CREATE TABLE shelf (
  fabric_seq INTEGER PRIMARY KEY,
  direction TEXT NOT NULL,
  kinds INTEGER NOT NULL,
  area_free INTEGER NOT NULL,
  longest_free INTEGER NOT NULL,
  widest INTEGER NOT NULL,
  since INTEGER NOT NULL,
  width INTEGER NOT NULL,
  came_first TEXT,
  came_last TEXT,
  rate_of_value REAL,
  rate_paid_last REAL,
  own_rate REAL
) STRICT;
CREATE INDEX shelf_by_free ON shelf (area_free DESC, fabric_seq);
CREATE INDEX shelf_by_age ON shelf (since, fabric_seq);

CREATE VIEW shelf_line AS
  SELECT fabric.seq AS fabric_seq, fabric.direction,
    coalesce((SELECT sum(DISTINCT ${BIT_OF_FORM}) ${PIECES} AND there > 0), 0) AS kinds,
    coalesce((SELECT sum(width * max(0, there - held)) ${PIECES}), 0) AS area_free,
    coalesce((SELECT max(there - held) ${PIECES} AND there > held), 0) AS longest_free,
    coalesce((SELECT max(width) ${PIECES} AND there > held), 0) AS widest,
    fabric.created_at AS since,
    fabric.width,
    ${boughtOn(FIRST_DAY)} AS came_first,
    ${boughtOn(LAST_DAY)} AS came_last,
    (SELECT sum(value_minor) * 1.0 / sum(there * width) ${PIECES} AND there > 0 AND value_minor IS NOT NULL) AS rate_of_value,
    (SELECT value_change * 1.0 / (length_change * fabric_piece.width) FROM ledger_entry
      JOIN fabric_piece ON fabric_piece.seq = piece_seq WHERE ledger_entry.seq = paid.entry_seq) AS rate_paid_last,
    (SELECT price_minor * 1.0 / for_length FROM fabric_price WHERE fabric_id = fabric.id) AS own_rate
  FROM fabric JOIN fabric_paid_last AS paid ON paid.fabric_seq = fabric.seq
  WHERE fabric.deleted_at IS NULL;

INSERT INTO shelf SELECT * FROM shelf_line;
`;

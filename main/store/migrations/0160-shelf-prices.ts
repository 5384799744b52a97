import type { Migration } from './migration';
import { BIT_OF_FORM, IS_NOT_WAITING, PIECES } from './0090-shelf';

/** Of a fabric's purchases that still stand and were paid for, the newest; one booked again counts from its first time. */
const PAID_LAST_SQL = `
CREATE VIEW fabric_paid_last AS
  SELECT fabric.seq AS fabric_seq, (
    SELECT entry.seq FROM cloth_piece INDEXED BY piece_of_fabric
      CROSS JOIN ledger_entry AS entry INDEXED BY entry_bought ON entry.piece_seq = cloth_piece.seq AND entry.kind = 'bought'
      JOIN booking ON booking.seq = entry.booking_seq
    WHERE cloth_piece.fabric_seq = fabric.seq AND entry.value_change > 0
      AND NOT EXISTS (SELECT 1 FROM ledger_entry AS later WHERE later.reverses = entry.seq)
    ORDER BY coalesce(booking.books_again, booking.seq) DESC LIMIT 1) AS entry_seq
  FROM fabric;
`;

const boughtOn = (which: 'min' | 'max'): string => `coalesce((
    SELECT ${which}(on_date) FROM cloth_piece INDEXED BY piece_of_fabric
      CROSS JOIN ledger_entry AS entry INDEXED BY entry_bought ON entry.piece_seq = cloth_piece.seq AND entry.kind = 'bought'
      JOIN booking ON booking.seq = entry.booking_seq
    WHERE cloth_piece.fabric_seq = fabric.seq
      AND NOT EXISTS (SELECT 1 FROM ledger_entry AS later WHERE later.reverses = entry.seq)
  ), date(fabric.created_at / 1000, 'unixepoch'))`;

/**
 * Rates are money for an area, but the maker's own one is for a length across the whole width; null where there is none. A fabric
 * that was never bought came on the day it was written down.
 */
const SHELF_SQL = `
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
  came_first TEXT NOT NULL,
  came_last TEXT NOT NULL,
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
    ${boughtOn('min')} AS came_first,
    ${boughtOn('max')} AS came_last,
    (SELECT sum(value_minor) * 1.0 / sum(there * width) ${PIECES} AND there > 0) AS rate_of_value,
    (SELECT value_change * 1.0 / (length_change * cloth_piece.width) FROM ledger_entry
      JOIN cloth_piece ON cloth_piece.seq = piece_seq WHERE ledger_entry.seq = paid.entry_seq) AS rate_paid_last,
    (SELECT price_minor * 1.0 / for_length FROM fabric_price WHERE fabric_id = fabric.id) AS own_rate
  FROM fabric JOIN fabric_paid_last AS paid ON paid.fabric_seq = fabric.seq
  WHERE fabric.deleted_at IS NULL;

INSERT INTO shelf SELECT * FROM shelf_line;
`;

const PIECE_COLUMNS = 'kinds, area_free, longest_free, widest, rate_of_value';
const BOUGHT_COLUMNS = 'came_first, came_last, rate_paid_last';

const renew = (
  columns: string,
): string => `UPDATE shelf SET (${columns}) = (SELECT ${columns} FROM shelf_line WHERE fabric_seq = shelf.fabric_seq)
    WHERE fabric_seq = (SELECT fabric_seq FROM cloth_piece WHERE seq = NEW.piece_seq);`;

const renewPrice = (
  row: 'NEW' | 'OLD',
): string => `UPDATE shelf SET own_rate = (SELECT own_rate FROM shelf_line WHERE fabric_seq = shelf.fabric_seq)
    WHERE fabric_seq = (SELECT seq FROM fabric WHERE id = ${row}.fabric_id);`;

const TRIGGERS_SQL = `
DROP TRIGGER shelf_piece_add;
DROP TRIGGER shelf_piece_change;
CREATE TRIGGER shelf_piece_add AFTER INSERT ON piece_sum WHEN ${IS_NOT_WAITING} BEGIN
  ${renew(PIECE_COLUMNS)}
END;
CREATE TRIGGER shelf_piece_change AFTER UPDATE ON piece_sum BEGIN
  ${renew(PIECE_COLUMNS)}
END;
CREATE TRIGGER shelf_bought AFTER INSERT ON ledger_entry
WHEN NEW.kind IN ('bought', 'taken-back') AND ${IS_NOT_WAITING} BEGIN
  ${renew(BOUGHT_COLUMNS)}
END;
CREATE TRIGGER shelf_price_add AFTER INSERT ON fabric_price BEGIN
  ${renewPrice('NEW')}
END;
CREATE TRIGGER shelf_price_change AFTER UPDATE ON fabric_price BEGIN
  ${renewPrice('NEW')}
END;
CREATE TRIGGER shelf_price_remove AFTER DELETE ON fabric_price BEGIN
  ${renewPrice('OLD')}
END;
`;

/** What a fabric costs and when it came stand on its line of the shelf, so that a filter by them reads nothing else. */
export const shelfPrices: Migration = {
  version: 160,
  says: 'The stash is filtered by price and by the day bought without adding up the ledger',
  apply: (database) => {
    for (const sql of [PAID_LAST_SQL, SHELF_SQL, TRIGGERS_SQL]) database.exec(sql);
  },
};

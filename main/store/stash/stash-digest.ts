import { oneNumber, type ReadableStore } from '../base/handles';
import { ENTRY_IS_ACTIVE } from '../ledger/ledger-sql';

/**
 * Sums over the whole ledger, kept in memory beside the file: one row for each fabric, month, project and leftover. The ledger only grows,
 * so each time only the new entries are read; `digest_state` says which was the last.
 */
const TABLES_SQL = `
CREATE TEMP TABLE IF NOT EXISTS digest_state (only_row INTEGER PRIMARY KEY CHECK (only_row = 1), entry_seq INTEGER NOT NULL);
INSERT OR IGNORE INTO digest_state VALUES (1, 0);
CREATE TEMP TABLE IF NOT EXISTS fabric_digest (
  fabric_seq INTEGER PRIMARY KEY,
  last_moved TEXT,
  area_there INTEGER NOT NULL,
  value_minor INTEGER NOT NULL,
  unpriced_area INTEGER NOT NULL
);
CREATE INDEX IF NOT EXISTS temp.digest_by_move ON fabric_digest (last_moved, fabric_seq) WHERE area_there > 0;
CREATE TEMP TABLE IF NOT EXISTS month_digest (
  month TEXT PRIMARY KEY NOT NULL,
  bought_minor INTEGER NOT NULL,
  bought_unpriced INTEGER NOT NULL,
  bought_area INTEGER NOT NULL,
  used_minor INTEGER NOT NULL,
  used_unpriced INTEGER NOT NULL,
  used_area INTEGER NOT NULL,
  value_change INTEGER NOT NULL,
  unpriced_change INTEGER NOT NULL
) WITHOUT ROWID;
CREATE TEMP TABLE IF NOT EXISTS project_digest (
  project_seq INTEGER PRIMARY KEY, area INTEGER NOT NULL, cost_minor INTEGER NOT NULL, unpriced_area INTEGER NOT NULL
);
CREATE TEMP TABLE IF NOT EXISTS leftover_digest (piece_seq INTEGER PRIMARY KEY, side INTEGER NOT NULL, area INTEGER NOT NULL);
CREATE INDEX IF NOT EXISTS temp.digest_by_side ON leftover_digest (side, area);
CREATE TEMP TABLE IF NOT EXISTS booked_since (piece_seq INTEGER PRIMARY KEY, fabric_seq INTEGER NOT NULL);
`;

const SINCE = '(SELECT entry_seq FROM digest_state)';

const BOOKED_SQL = `
DELETE FROM booked_since;
INSERT OR IGNORE INTO booked_since
  SELECT piece_seq, fabric_seq FROM ledger_entry JOIN booking ON booking.seq = booking_seq
  WHERE ledger_entry.seq > ${SINCE};
`;

const CHANGED_FABRICS = '(SELECT fabric_seq FROM booked_since)';

/**
 * A fabric last moved on the day it was last bought or cut; what was undone does not count. The whole ledger is read in the order of the
 * file, a few fabrics through the index.
 */
const fabricsSql = (entries: string): string => `
DELETE FROM fabric_digest WHERE fabric_seq IN ${CHANGED_FABRICS};
INSERT INTO fabric_digest
  SELECT fabric_seq, max(on_date), 0, 0, 0
  FROM ${entries}
  WHERE entry.kind IN ('bought', 'cut') AND ${ENTRY_IS_ACTIVE}
  GROUP BY fabric_seq;
UPDATE fabric_digest SET
  (area_there, value_minor, unpriced_area) = (SELECT coalesce(sum(there * width), 0), coalesce(sum(value_minor), 0),
    coalesce(sum(there * width) FILTER (WHERE value_minor IS NULL), 0) FROM fabric_piece
    JOIN piece_sum ON piece_seq = fabric_piece.seq WHERE fabric_piece.fabric_seq = fabric_digest.fabric_seq)
  WHERE fabric_seq IN ${CHANGED_FABRICS};
`;

const ALL_ENTRIES = 'ledger_entry AS entry CROSS JOIN booking ON booking.seq = entry.booking_seq';
const CHANGED_ENTRIES = `(SELECT DISTINCT fabric_seq AS changed_seq FROM booked_since)
    CROSS JOIN booking ON booking.fabric_seq = changed_seq
    CROSS JOIN ledger_entry AS entry ON entry.booking_seq = booking.seq`;

const IS_BOUGHT = "coalesce(was.kind, entry.kind) = 'bought'";
const IS_USED = "coalesce(was.kind, entry.kind) IN ('cut', 'leftover', 'discarded')";

/**
 * What was undone is subtracted from the month it was booked in. What was bought in a year stands under the year, and what was bought on a
 * day not known under no month. Used is what was cut, less leftovers, and what was thrown out.
 */
const MONTHS_SQL = `
INSERT INTO month_digest
  SELECT coalesce(substr(CASE WHEN first.seq IS NULL THEN booking.on_date ELSE first.on_date END, 1, 7), '') AS month,
    coalesce(sum(entry.value_change) FILTER (WHERE ${IS_BOUGHT}), 0),
    coalesce(sum(entry.length_change * width) FILTER (WHERE ${IS_BOUGHT} AND entry.value_change IS NULL), 0),
    coalesce(sum(entry.length_change * width) FILTER (WHERE ${IS_BOUGHT}), 0),
    coalesce(-sum(entry.value_change) FILTER (WHERE ${IS_USED}), 0),
    coalesce(-sum(entry.length_change * width) FILTER (WHERE ${IS_USED} AND entry.value_change IS NULL), 0),
    coalesce(-sum(entry.length_change * width) FILTER (WHERE ${IS_USED}), 0),
    coalesce(sum(entry.value_change), 0),
    coalesce(sum(entry.length_change * width) FILTER (WHERE entry.value_change IS NULL), 0)
  FROM ledger_entry AS entry
    JOIN booking ON booking.seq = entry.booking_seq
    JOIN fabric_piece ON fabric_piece.seq = entry.piece_seq
    LEFT JOIN ledger_entry AS was ON was.seq = entry.reverses
    LEFT JOIN booking AS first ON first.seq = was.booking_seq
  WHERE entry.seq > ${SINCE}
  GROUP BY month
  ON CONFLICT (month) DO UPDATE SET
    bought_minor = bought_minor + excluded.bought_minor,
    bought_unpriced = bought_unpriced + excluded.bought_unpriced,
    bought_area = bought_area + excluded.bought_area,
    used_minor = used_minor + excluded.used_minor,
    used_unpriced = used_unpriced + excluded.used_unpriced,
    used_area = used_area + excluded.used_area,
    value_change = value_change + excluded.value_change,
    unpriced_change = unpriced_change + excluded.unpriced_change;
`;

const PROJECTS_SQL = `
INSERT OR REPLACE INTO project_digest
  SELECT project_seq, sum(area), sum(cost_minor), sum(unpriced_area) FROM project_use
  WHERE project_seq IN (SELECT project_seq FROM ledger_entry JOIN booking ON booking.seq = booking_seq
    WHERE ledger_entry.seq > ${SINCE} AND project_seq IS NOT NULL)
  GROUP BY project_seq;
`;

const LEFTOVERS_SQL = `
DELETE FROM leftover_digest WHERE piece_seq IN (SELECT piece_seq FROM booked_since);
INSERT INTO leftover_digest
  SELECT booked_since.piece_seq, min(width, there), width * there
  FROM booked_since JOIN fabric_piece ON fabric_piece.seq = booked_since.piece_seq
    JOIN piece_sum ON piece_sum.piece_seq = booked_since.piece_seq
  WHERE kind = 'leftover' AND there > 0;
UPDATE digest_state SET entry_seq = (SELECT coalesce(max(seq), 0) FROM ledger_entry);
DELETE FROM booked_since;
`;

/** Brings the digest's tables up to the last booking. Call it before reading them. */
export function updateDigest(store: ReadableStore): void {
  store.database.exec(TABLES_SQL);
  const since = oneNumber(store, 'SELECT entry_seq FROM digest_state');
  if (oneNumber(store, 'SELECT EXISTS (SELECT 1 FROM ledger_entry WHERE seq > ?)', since) === 0) return;
  const fabrics = fabricsSql(since === 0 ? ALL_ENTRIES : CHANGED_ENTRIES);
  // All or nothing, because the months are added to earlier sums.
  store.database.exec('SAVEPOINT digest');
  try {
    store.database.exec(BOOKED_SQL + fabrics + MONTHS_SQL + PROJECTS_SQL + LEFTOVERS_SQL);
  } catch (error) {
    store.database.exec('ROLLBACK TO digest');
    throw error;
  } finally {
    store.database.exec('RELEASE digest');
  }
}

import { LEDGER_SQL } from './0010-ledger';
import type { Migration } from './migration';

const STAGE_KINDS = `'piecing', 'longarm', 'home-quilting', 'outer-binding', 'center-cut', 'inner-binding', 'hand-finish', 'other'`;
const STAGE_STATES = `'planned', 'in-hand', 'out', 'done', 'skipped'`;
const SHORT_TEXT = 'TEXT NOT NULL CHECK (length(%) <= 120)';
const short = (column: string): string => `${column} ${SHORT_TEXT.replace('%', column)}`;
const day = (column: string): string =>
  `${column} TEXT CHECK (${column} IS NULL OR ${column} GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]')`;
const flag = (column: string): string => `${column} INTEGER NOT NULL CHECK (${column} IN (0, 1))`;

/**
 * Rows that bookings name are never removed but marked with `deleted_at`, so that the ledger keeps the names it was
 * written with; everything else is removed and lives on in `change_row` alone.
 */
const NOTEBOOK_SQL = `
CREATE TABLE workshop (
  id TEXT PRIMARY KEY CHECK (id = 'workshop'),
  ${short('name')},
  currency TEXT NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  theme TEXT NOT NULL CHECK (theme IN ('system', 'light', 'dark')),
  habits_json TEXT NOT NULL CHECK (json_type(habits_json) = 'object')
) STRICT;

CREATE TABLE project (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  purpose TEXT NOT NULL CHECK (purpose IN ('gift', 'commission', 'own')),
  ${short('for_whom')},
  ${day('due_on')},
  outline_json TEXT NOT NULL CHECK (json_type(outline_json) = 'object'),
  hole_diameter INTEGER CHECK (hole_diameter > 0),
  ${flag('has_slit')},
  habit_changes_json TEXT NOT NULL CHECK (json_type(habit_changes_json) = 'object'),
  notes TEXT NOT NULL,
  ${flag('is_archived')},
  deleted_at INTEGER,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  CHECK (has_slit = 0 OR hole_diameter IS NOT NULL)
) STRICT;
CREATE INDEX project_open ON project (due_on IS NULL, due_on, seq) WHERE is_archived = 0 AND deleted_at IS NULL;
CREATE INDEX project_archived ON project (changed_at DESC, seq) WHERE is_archived = 1 AND deleted_at IS NULL;

CREATE TABLE stage (
  id TEXT PRIMARY KEY NOT NULL,
  project_id TEXT NOT NULL REFERENCES project (id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position >= 0),
  kind TEXT NOT NULL CHECK (kind IN (${STAGE_KINDS})),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  state TEXT NOT NULL CHECK (state IN (${STAGE_STATES})),
  estimate_minutes INTEGER NOT NULL CHECK (estimate_minutes BETWEEN 0 AND 100000),
  held_up_by TEXT NOT NULL,
  notes TEXT NOT NULL,
  gate_passed_why TEXT NOT NULL,
  started_at INTEGER,
  finished_at INTEGER,
  CHECK ((finished_at IS NOT NULL) = (state = 'done'))
) STRICT;
CREATE INDEX stage_of_project ON stage (project_id, position);

CREATE TABLE checklist_item (
  id TEXT PRIMARY KEY NOT NULL,
  stage_id TEXT NOT NULL REFERENCES stage (id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position >= 0),
  text TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 300),
  ${flag('is_gate')},
  closed_by TEXT CHECK (closed_by IN (${STAGE_KINDS})),
  ${flag('is_ticked')}
) STRICT;
CREATE INDEX checklist_of_stage ON checklist_item (stage_id, position);

CREATE TABLE stage_event (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  project_id TEXT NOT NULL REFERENCES project (id) ON DELETE CASCADE,
  stage_id TEXT NOT NULL,
  stage_name TEXT NOT NULL,
  from_state TEXT NOT NULL CHECK (from_state IN (${STAGE_STATES})),
  to_state TEXT NOT NULL CHECK (to_state IN (${STAGE_STATES})),
  why TEXT NOT NULL,
  at INTEGER NOT NULL
) STRICT;
CREATE INDEX event_of_project ON stage_event (project_id, at);

CREATE TABLE trip (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  stage_id TEXT NOT NULL REFERENCES stage (id) ON DELETE CASCADE,
  with_whom TEXT NOT NULL CHECK (length(with_whom) BETWEEN 1 AND 120),
  ${day('sent_on')},
  ${day('promised_on')},
  ${day('back_on')},
  tracking_number TEXT NOT NULL,
  sent_along TEXT NOT NULL,
  asked_for TEXT NOT NULL,
  price_minor INTEGER CHECK (price_minor >= 0),
  CHECK (back_on IS NULL OR sent_on IS NULL OR back_on >= sent_on)
) STRICT;
CREATE INDEX trip_of_stage ON trip (stage_id);

CREATE TABLE calculation (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  stage_id TEXT NOT NULL REFERENCES stage (id) ON DELETE CASCADE,
  calculator TEXT NOT NULL,
  version INTEGER NOT NULL,
  input_json TEXT NOT NULL CHECK (json_valid(input_json)),
  own_input_json TEXT NOT NULL CHECK (json_valid(own_input_json)),
  answer_json TEXT NOT NULL CHECK (json_valid(answer_json)),
  kept_at INTEGER NOT NULL
) STRICT;
CREATE UNIQUE INDEX calculation_of_stage ON calculation (stage_id, calculator);

CREATE TABLE picture (
  hash TEXT PRIMARY KEY NOT NULL CHECK (length(hash) = 64),
  type TEXT NOT NULL CHECK (type IN ('image/jpeg', 'image/png', 'image/webp')),
  bytes INTEGER NOT NULL CHECK (bytes > 0),
  thumbnail BLOB
) STRICT;

CREATE TABLE photo (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  hash TEXT NOT NULL REFERENCES picture (hash),
  stage_id TEXT REFERENCES stage (id) ON DELETE CASCADE,
  caption TEXT NOT NULL,
  added_at INTEGER NOT NULL
) STRICT;
CREATE INDEX photo_of_stage ON photo (stage_id);

CREATE TABLE stage_plan (
  id TEXT PRIMARY KEY NOT NULL,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  says TEXT NOT NULL,
  stages_json TEXT NOT NULL CHECK (json_type(stages_json) = 'array')
) STRICT;
`;

const FABRIC_SQL = `
CREATE TABLE fabric (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  ${short('print')},
  ${short('color_words')},
  ${short('fiber')},
  direction TEXT NOT NULL CHECK (direction IN ('any', 'one-way', 'two-way')),
  width INTEGER NOT NULL CHECK (width > 0),
  ${flag('is_washed')},
  ${short('supplier')},
  ${short('place')},
  swatch TEXT NOT NULL CHECK (length(swatch) = 7),
  notes TEXT NOT NULL,
  photo_id TEXT REFERENCES photo (id),
  deleted_at INTEGER,
  created_at INTEGER NOT NULL
) STRICT;
CREATE INDEX fabric_with_photo ON fabric (photo_id) WHERE photo_id IS NOT NULL;
CREATE INDEX fabric_by_name ON fabric (name COLLATE NOCASE, seq) WHERE deleted_at IS NULL;

CREATE VIRTUAL TABLE fabric_words USING fts5 (
  words, content = '', contentless_delete = 1, prefix = '1 2 3', tokenize = 'unicode61 remove_diacritics 2'
);
CREATE TRIGGER fabric_words_add AFTER INSERT ON fabric WHEN NEW.deleted_at IS NULL BEGIN
  INSERT INTO fabric_words (rowid, words) VALUES (NEW.seq, ${fabricWords('NEW')});
END;
CREATE TRIGGER fabric_words_change AFTER UPDATE ON fabric BEGIN
  DELETE FROM fabric_words WHERE rowid = OLD.seq;
  INSERT INTO fabric_words (rowid, words) SELECT NEW.seq, ${fabricWords('NEW')} WHERE NEW.deleted_at IS NULL;
END;
CREATE TRIGGER fabric_words_remove AFTER DELETE ON fabric BEGIN
  DELETE FROM fabric_words WHERE rowid = OLD.seq;
END;
`;

function fabricWords(row: string): string {
  const columns = ['name', 'print', 'color_words', 'fiber', 'supplier', 'place', 'notes'];
  return columns.map((column) => `${row}.${column}`).join(` || ' ' || `);
}

const CHANGES_SQL = `
CREATE TABLE change_log (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  words TEXT NOT NULL,
  made_at INTEGER NOT NULL,
  ${flag('is_undone')}
) STRICT;

CREATE TABLE change_row (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  change_seq INTEGER NOT NULL REFERENCES change_log (seq) ON DELETE CASCADE,
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  before_json TEXT CHECK (before_json IS NULL OR json_valid(before_json)),
  after_json TEXT CHECK (after_json IS NULL OR json_valid(after_json)),
  CHECK (before_json IS NOT NULL OR after_json IS NOT NULL)
) STRICT;
CREATE INDEX row_of_change ON change_row (change_seq, seq);

CREATE TABLE change_booking (
  change_seq INTEGER NOT NULL REFERENCES change_log (seq) ON DELETE CASCADE,
  booking_seq INTEGER NOT NULL REFERENCES booking (seq),
  PRIMARY KEY (change_seq, booking_seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE current_change (
  only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
  change_seq INTEGER REFERENCES change_log (seq)
) STRICT;
INSERT INTO current_change VALUES (1, NULL);
`;

export const firstTables: Migration = {
  version: 10,
  says: 'Projects with their stages, the stash with its ledger, and the record of changes',
  apply: (database) => {
    for (const sql of [NOTEBOOK_SQL, FABRIC_SQL, LEDGER_SQL, CHANGES_SQL]) database.exec(sql);
  },
};

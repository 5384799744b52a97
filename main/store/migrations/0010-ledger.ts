const CLOTH_KINDS = `'yardage', 'fat-quarter', 'fat-eighth', 'precut-strips', 'precut-squares', 'panel', 'leftover', 'bias-made-up', 'backing', 'wide-backing', 'batting'`;

/**
 * The ledger is only ever added to. The three tables of sums are kept by the trigger `ledger_adds_up`, so that a list
 * need not add up the ledger; their own triggers refuse any sum of a piece that is not what the ledger says, whoever
 * writes it, and their CHECKs refuse an entry that would take more cloth, hold or value than there is.
 */
export const LEDGER_SQL = `
CREATE TABLE cloth_piece (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  fabric_seq INTEGER NOT NULL REFERENCES fabric (seq),
  kind TEXT NOT NULL CHECK (kind IN (${CLOTH_KINDS})),
  width INTEGER NOT NULL CHECK (width > 0)
) STRICT;
CREATE INDEX piece_of_fabric ON cloth_piece (fabric_seq);

CREATE TABLE booking (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  fabric_seq INTEGER NOT NULL REFERENCES fabric (seq),
  project_seq INTEGER REFERENCES project (seq),
  stage_id TEXT,
  stage_name TEXT,
  takes_back INTEGER UNIQUE REFERENCES booking (seq),
  books_again INTEGER REFERENCES booking (seq),
  note TEXT NOT NULL,
  on_date TEXT NOT NULL CHECK (on_date GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'),
  recorded_at INTEGER NOT NULL,
  CHECK ((stage_id IS NULL) = (stage_name IS NULL)),
  CHECK (stage_id IS NULL OR project_seq IS NOT NULL),
  CHECK (takes_back IS NULL OR books_again IS NULL)
) STRICT;
CREATE INDEX booking_again ON booking (books_again) WHERE books_again IS NOT NULL;
CREATE INDEX booking_of_fabric ON booking (fabric_seq, seq);
CREATE INDEX booking_of_project ON booking (project_seq, seq) WHERE project_seq IS NOT NULL;

CREATE TABLE ledger_entry (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  booking_seq INTEGER NOT NULL REFERENCES booking (seq),
  piece_seq INTEGER NOT NULL REFERENCES cloth_piece (seq),
  kind TEXT NOT NULL,
  length_change INTEGER NOT NULL,
  held_change INTEGER NOT NULL,
  value_change INTEGER NOT NULL,
  reverses INTEGER UNIQUE REFERENCES ledger_entry (seq),
  CHECK ((kind = 'taken-back') = (reverses IS NOT NULL)),
  CHECK (CASE kind
    WHEN 'bought' THEN length_change > 0 AND held_change = 0 AND value_change >= 0
    WHEN 'set-aside' THEN length_change = 0 AND held_change > 0 AND value_change = 0
    WHEN 'released' THEN length_change = 0 AND held_change < 0 AND value_change = 0
    WHEN 'cut' THEN length_change < 0 AND held_change BETWEEN length_change AND 0 AND value_change <= 0
    WHEN 'leftover' THEN length_change > 0 AND held_change = 0 AND value_change >= 0
    WHEN 'discarded' THEN length_change < 0 AND held_change = 0 AND value_change <= 0
    WHEN 'counted' THEN held_change = 0 AND value_change <= 0
    WHEN 'taken-back' THEN 1
    ELSE 0
  END)
) STRICT;
CREATE INDEX entry_of_piece ON ledger_entry (piece_seq);
CREATE INDEX entry_of_booking ON ledger_entry (booking_seq);

CREATE TABLE piece_sum (
  piece_seq INTEGER PRIMARY KEY REFERENCES cloth_piece (seq),
  there INTEGER NOT NULL CHECK (there >= 0),
  held INTEGER NOT NULL CHECK (held >= 0),
  value_minor INTEGER NOT NULL CHECK (value_minor >= 0),
  CHECK (there > 0 OR value_minor = 0)
) STRICT;

CREATE TABLE piece_hold (
  project_seq INTEGER NOT NULL REFERENCES project (seq),
  piece_seq INTEGER NOT NULL REFERENCES cloth_piece (seq),
  held INTEGER NOT NULL CHECK (held >= 0),
  PRIMARY KEY (project_seq, piece_seq)
) STRICT, WITHOUT ROWID;
CREATE INDEX hold_of_piece ON piece_hold (piece_seq);

CREATE TABLE project_use (
  project_seq INTEGER NOT NULL REFERENCES project (seq),
  fabric_seq INTEGER NOT NULL REFERENCES fabric (seq),
  area INTEGER NOT NULL,
  cost_minor INTEGER NOT NULL,
  PRIMARY KEY (project_seq, fabric_seq)
) STRICT, WITHOUT ROWID;
CREATE INDEX use_of_fabric ON project_use (fabric_seq);
CREATE INDEX use_by_area ON project_use (project_seq, area DESC, cost_minor);

CREATE TRIGGER ledger_entry_fits BEFORE INSERT ON ledger_entry BEGIN
  SELECT RAISE(ABORT, 'This was taken back already')
    WHERE NEW.reverses IS NOT NULL AND EXISTS (SELECT 1 FROM ledger_entry WHERE reverses = NEW.reverses);
  SELECT RAISE(ABORT, 'The piece is of another fabric than the booking')
    WHERE (SELECT fabric_seq FROM cloth_piece WHERE seq = NEW.piece_seq)
      IS NOT (SELECT fabric_seq FROM booking WHERE seq = NEW.booking_seq);
  SELECT RAISE(ABORT, 'Cloth is held for a project, or not at all')
    WHERE NEW.held_change <> 0 AND (SELECT project_seq FROM booking WHERE seq = NEW.booking_seq) IS NULL;
  SELECT RAISE(ABORT, 'What is taken back must be the opposite of what was booked')
    WHERE NEW.reverses IS NOT NULL AND NOT EXISTS (
      SELECT 1 FROM ledger_entry AS was
      JOIN booking AS now_booking ON now_booking.seq = NEW.booking_seq AND now_booking.takes_back = was.booking_seq
      WHERE was.seq = NEW.reverses AND was.kind <> 'taken-back' AND was.piece_seq = NEW.piece_seq
        AND was.length_change = -NEW.length_change AND was.held_change = -NEW.held_change
        AND was.value_change = -NEW.value_change);
END;

CREATE TRIGGER ledger_adds_up AFTER INSERT ON ledger_entry BEGIN
  UPDATE piece_sum SET there = there + NEW.length_change, held = held + NEW.held_change,
    value_minor = value_minor + NEW.value_change WHERE piece_seq = NEW.piece_seq;
  INSERT INTO piece_sum (piece_seq, there, held, value_minor)
    SELECT NEW.piece_seq, NEW.length_change, NEW.held_change, NEW.value_change
    WHERE NOT EXISTS (SELECT 1 FROM piece_sum WHERE piece_seq = NEW.piece_seq);

  UPDATE piece_hold SET held = held + NEW.held_change
    WHERE piece_seq = NEW.piece_seq AND NEW.held_change <> 0
      AND project_seq = (SELECT project_seq FROM booking WHERE seq = NEW.booking_seq);
  INSERT INTO piece_hold (project_seq, piece_seq, held)
    SELECT project_seq, NEW.piece_seq, NEW.held_change FROM booking
    WHERE seq = NEW.booking_seq AND NEW.held_change <> 0 AND NOT EXISTS (
      SELECT 1 FROM piece_hold AS known
      WHERE known.piece_seq = NEW.piece_seq AND known.project_seq = booking.project_seq);

  INSERT INTO project_use (project_seq, fabric_seq, area, cost_minor)
    SELECT booking.project_seq, booking.fabric_seq, 0, 0 FROM booking
    WHERE booking.seq = NEW.booking_seq AND booking.project_seq IS NOT NULL
      AND (NEW.length_change <> 0 OR NEW.value_change <> 0) AND NOT EXISTS (
        SELECT 1 FROM project_use AS known
        WHERE known.project_seq = booking.project_seq AND known.fabric_seq = booking.fabric_seq);
  UPDATE project_use SET
    area = area - NEW.length_change * (SELECT width FROM cloth_piece WHERE seq = NEW.piece_seq),
    cost_minor = cost_minor - NEW.value_change
    WHERE (project_seq, fabric_seq) = (SELECT project_seq, fabric_seq FROM booking WHERE seq = NEW.booking_seq)
      AND (NEW.length_change <> 0 OR NEW.value_change <> 0);

  SELECT RAISE(ABORT, 'More than there is') WHERE ${sumDiffers('piece_seq = NEW.piece_seq')}
    OR (NEW.held_change <> 0 AND ${holdDiffers('NEW.piece_seq', '(SELECT project_seq FROM booking WHERE seq = NEW.booking_seq)')});
END;

${(['INSERT', 'UPDATE'] as const).map(sumIsTrue).join('\n')}

${['ledger_entry', 'booking', 'cloth_piece'].map(neverEdited).join('\n')}
${['ledger_entry', 'booking', 'cloth_piece', 'piece_sum', 'piece_hold', 'project_use'].map(neverDeleted).join('\n')}
`;

/** An entry written with OR IGNORE skips a sum that breaks a CHECK; so every entry ends by asking whether they agree. */
function sumDiffers(piece: string): string {
  return `(SELECT sum(length_change), sum(held_change), sum(value_change) FROM ledger_entry WHERE ${piece})
    IS NOT (SELECT there, held, value_minor FROM piece_sum WHERE ${piece})`;
}

function holdDiffers(piece: string, project: string): string {
  return `(SELECT sum(held_change) FROM ledger_entry JOIN booking ON booking.seq = ledger_entry.booking_seq
      WHERE piece_seq = ${piece} AND project_seq = ${project})
    IS NOT (SELECT held FROM piece_hold WHERE piece_seq = ${piece} AND project_seq = ${project})`;
}

function sumIsTrue(event: 'INSERT' | 'UPDATE'): string {
  const when = event.toLowerCase();
  return `
CREATE TRIGGER piece_sum_true_on_${when} AFTER ${event} ON piece_sum
WHEN ${sumDiffers('piece_seq = NEW.piece_seq')}
BEGIN SELECT RAISE(ABORT, 'Not what the ledger says of this piece'); END;
CREATE TRIGGER piece_hold_true_on_${when} AFTER ${event} ON piece_hold
WHEN ${holdDiffers('NEW.piece_seq', 'NEW.project_seq')}
BEGIN SELECT RAISE(ABORT, 'Not what the ledger says is held'); END;`;
}

function neverDeleted(table: string): string {
  return `CREATE TRIGGER ${table}_never_delete BEFORE DELETE ON ${table}
BEGIN SELECT RAISE(ABORT, 'The ledger is never edited'); END;`;
}

/** REPLACE would remove a row without asking the trigger for DELETE, so an insert over a row is refused too. */
function neverEdited(table: string): string {
  return `CREATE TRIGGER ${table}_never_update BEFORE UPDATE ON ${table}
BEGIN SELECT RAISE(ABORT, 'The ledger is never edited'); END;
CREATE TRIGGER ${table}_never_replace BEFORE INSERT ON ${table}
WHEN EXISTS (SELECT 1 FROM ${table} WHERE seq = NEW.seq OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'The ledger is never edited'); END;`;
}

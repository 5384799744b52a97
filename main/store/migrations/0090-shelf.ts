import type { Migration } from './migration';

const FORMS = [
  ...['yardage', 'fat-quarter', 'fat-eighth', 'precut-strips', 'precut-squares', 'panel', 'leftover'],
  ...[
    'bias-made-up',
    'backing',
    'wide-backing',
    'batting',
    'batting-package',
    'thread',
    'needles',
    'notions',
  ],
];

/** The place of a form of cloth among the bits of `kinds`; later steps write the same line. */
export const BIT_OF_FORM = `CASE kind ${FORMS.map((form, bit) => `WHEN '${form}' THEN ${String(2 ** bit)}`).join(' ')} END`;

export const PIECES =
  'FROM cloth_piece JOIN piece_sum ON piece_seq = cloth_piece.seq WHERE fabric_seq = fabric.seq';

/** A line for each fabric with what the stash is filtered and ordered by, narrow enough to be read as a whole for each key typed. */
const SHELF_SQL = `
CREATE TABLE shelf (
  fabric_seq INTEGER PRIMARY KEY,
  direction TEXT NOT NULL,
  kinds INTEGER NOT NULL,
  area_free INTEGER NOT NULL,
  longest_free INTEGER NOT NULL,
  widest INTEGER NOT NULL,
  since INTEGER NOT NULL
) STRICT;
CREATE INDEX shelf_by_free ON shelf (area_free DESC, fabric_seq);
CREATE INDEX shelf_by_age ON shelf (since, fabric_seq);

CREATE VIRTUAL TABLE fabric_vocabulary USING fts5vocab (fabric_words, 'row');
`;

/** What a line must say; a fabric that is deleted has none. */
const LINE_SQL = `
CREATE VIEW shelf_line AS
  SELECT fabric.seq AS fabric_seq, fabric.direction,
    coalesce((SELECT sum(DISTINCT ${BIT_OF_FORM}) ${PIECES} AND there > 0), 0) AS kinds,
    coalesce((SELECT sum(width * max(0, there - held)) ${PIECES}), 0) AS area_free,
    coalesce((SELECT max(there - held) ${PIECES} AND there > held), 0) AS longest_free,
    coalesce((SELECT max(width) ${PIECES} AND there > held), 0) AS widest,
    fabric.created_at AS since
  FROM fabric WHERE fabric.deleted_at IS NULL;
`;

export const IS_NOT_WAITING = '(SELECT is_waiting FROM search_state) = 0';
const CHANGED_WORDS = 'UPDATE search_state SET changes = changes + 1;';
const ADD_LINE = 'INSERT INTO shelf SELECT * FROM shelf_line WHERE fabric_seq = NEW.seq;';
const RENEW_LINE = `UPDATE shelf SET (kinds, area_free, longest_free, widest) =
    (SELECT kinds, area_free, longest_free, widest FROM shelf_line WHERE fabric_seq = shelf.fabric_seq)
    WHERE fabric_seq = (SELECT fabric_seq FROM cloth_piece WHERE seq = NEW.piece_seq);`;

const TRIGGERS_SQL = `
CREATE TRIGGER shelf_fabric_add AFTER INSERT ON fabric WHEN ${IS_NOT_WAITING} BEGIN
  ${ADD_LINE}
  ${CHANGED_WORDS}
END;
CREATE TRIGGER shelf_fabric_change AFTER UPDATE ON fabric BEGIN
  DELETE FROM shelf WHERE fabric_seq = NEW.seq;
  ${ADD_LINE}
  ${CHANGED_WORDS}
END;
CREATE TRIGGER shelf_fabric_remove AFTER DELETE ON fabric BEGIN
  DELETE FROM shelf WHERE fabric_seq = OLD.seq;
END;
CREATE TRIGGER shelf_place_change AFTER UPDATE OF path ON place BEGIN
  ${CHANGED_WORDS}
END;
CREATE TRIGGER shelf_piece_lies AFTER INSERT ON piece_place BEGIN
  ${CHANGED_WORDS}
END;
CREATE TRIGGER shelf_piece_lies_elsewhere AFTER UPDATE ON piece_place BEGIN
  ${CHANGED_WORDS}
END;
CREATE TRIGGER shelf_piece_add AFTER INSERT ON piece_sum WHEN ${IS_NOT_WAITING} BEGIN
  ${RENEW_LINE}
END;
CREATE TRIGGER shelf_piece_change AFTER UPDATE ON piece_sum BEGIN
  ${RENEW_LINE}
END;
`;

export const shelfOfFabrics: Migration = {
  version: 90,
  says: 'What the stash is filtered and ordered by, and the words that a slip of a letter is mended with',
  apply: (database) => {
    database.exec(SHELF_SQL);
    database.exec(LINE_SQL);
    database.exec('INSERT INTO shelf SELECT * FROM shelf_line');
    database.exec(TRIGGERS_SQL);
  },
};

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

const BIT_OF_FORM = `CASE kind ${FORMS.map((form, bit) => `WHEN '${form}' THEN ${String(2 ** bit)}`).join(' ')} END`;

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

CREATE TABLE search_state (
  only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
  changes INTEGER NOT NULL
) STRICT;
INSERT INTO search_state VALUES (1, 0);
CREATE VIRTUAL TABLE fabric_vocabulary USING fts5vocab (fabric_words, 'row');
`;

const lineOf = (fabrics: string): string => `
  DELETE FROM shelf WHERE fabric_seq IN (${fabrics});
  INSERT INTO shelf
    SELECT fabric.seq, fabric.direction,
      coalesce((SELECT sum(DISTINCT ${BIT_OF_FORM}) FROM cloth_piece JOIN piece_sum ON piece_seq = cloth_piece.seq
        WHERE fabric_seq = fabric.seq AND there > 0), 0),
      coalesce((SELECT sum(width * max(0, there - held)) FROM cloth_piece JOIN piece_sum ON piece_seq = cloth_piece.seq
        WHERE fabric_seq = fabric.seq), 0),
      coalesce((SELECT max(there - held) FROM cloth_piece JOIN piece_sum ON piece_seq = cloth_piece.seq
        WHERE fabric_seq = fabric.seq AND there > held), 0),
      coalesce((SELECT max(width) FROM cloth_piece JOIN piece_sum ON piece_seq = cloth_piece.seq
        WHERE fabric_seq = fabric.seq AND there > held), 0),
      fabric.created_at
    FROM fabric WHERE fabric.seq IN (${fabrics}) AND fabric.deleted_at IS NULL;`;

const ofPiece = '(SELECT fabric_seq FROM cloth_piece WHERE seq = NEW.piece_seq)';

const TRIGGERS_SQL = `
CREATE TRIGGER shelf_fabric_add AFTER INSERT ON fabric BEGIN${lineOf('NEW.seq')}
  UPDATE search_state SET changes = changes + 1;
END;
CREATE TRIGGER shelf_fabric_change AFTER UPDATE ON fabric BEGIN${lineOf('NEW.seq')}
  UPDATE search_state SET changes = changes + 1;
END;
CREATE TRIGGER shelf_fabric_remove AFTER DELETE ON fabric BEGIN
  DELETE FROM shelf WHERE fabric_seq = OLD.seq;
END;
CREATE TRIGGER shelf_place_change AFTER UPDATE OF path ON place BEGIN
  UPDATE search_state SET changes = changes + 1;
END;
CREATE TRIGGER shelf_piece_lies AFTER INSERT ON piece_place BEGIN
  UPDATE search_state SET changes = changes + 1;
END;
CREATE TRIGGER shelf_piece_lies_elsewhere AFTER UPDATE ON piece_place BEGIN
  UPDATE search_state SET changes = changes + 1;
END;
CREATE TRIGGER shelf_piece_add AFTER INSERT ON piece_sum BEGIN${lineOf(ofPiece)}
END;
CREATE TRIGGER shelf_piece_change AFTER UPDATE ON piece_sum BEGIN${lineOf(ofPiece)}
END;
`;

export const shelfOfFabrics: Migration = {
  version: 90,
  says: 'What the stash is filtered and ordered by, and the words that a slip of a letter is mended with',
  apply: (database) => {
    database.exec(SHELF_SQL);
    database.exec(lineOf('SELECT seq FROM fabric'));
    database.exec(TRIGGERS_SQL);
  },
};

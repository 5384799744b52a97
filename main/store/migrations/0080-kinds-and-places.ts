import { randomUUID } from 'node:crypto';
import type Database from 'better-sqlite3';
import type { Migration } from './migration';
import { rebuildTable } from './rebuild-table';
import { STARTING_KIND_ROWS } from './0080-starting-kinds';

const FORMS = `'yardage', 'fat-quarter', 'fat-eighth', 'precut-strips', 'precut-squares', 'panel', 'leftover', 'bias-made-up', 'backing', 'wide-backing', 'batting', 'batting-package', 'thread', 'needles', 'notions'`;

const KINDS_SQL = `
CREATE TABLE stash_kind (
  id TEXT PRIMARY KEY NOT NULL,
  form TEXT NOT NULL CHECK (form IN (${FORMS})),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  width INTEGER CHECK (width > 0),
  length INTEGER CHECK (length > 0),
  count INTEGER CHECK (count > 0),
  is_hidden INTEGER NOT NULL CHECK (is_hidden IN (0, 1)),
  position INTEGER NOT NULL
) STRICT;
`;

const PIECE_SQL = `
CREATE TABLE cloth_piece (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  fabric_seq INTEGER NOT NULL REFERENCES fabric (seq),
  kind TEXT NOT NULL CHECK (kind IN (${FORMS})),
  width INTEGER NOT NULL CHECK (width > 0),
  kind_id TEXT,
  unit_length INTEGER CHECK (unit_length > 0)
) STRICT;
`;

/** `path` is every name from the room down, so that a place is written and read as people say it: `Sewing room, shelf 2`. */
const PLACES_SQL = `
CREATE TABLE place (
  id TEXT PRIMARY KEY NOT NULL,
  parent_id TEXT REFERENCES place (id),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120 AND instr(name, ',') = 0),
  path TEXT NOT NULL COLLATE NOCASE UNIQUE
) STRICT;
CREATE INDEX place_inside ON place (parent_id);

CREATE TABLE piece_place (
  id TEXT PRIMARY KEY NOT NULL REFERENCES cloth_piece (id),
  place_id TEXT NOT NULL REFERENCES place (id)
) STRICT;
CREATE INDEX piece_in_place ON piece_place (place_id);

ALTER TABLE fabric ADD COLUMN place_id TEXT REFERENCES place (id) ON DELETE SET NULL;
`;

const reindexed = (seq: string): string => `
  DELETE FROM fabric_words WHERE rowid = ${seq};
  INSERT INTO fabric_words (rowid, words) SELECT seq, words FROM fabric_said WHERE seq = ${seq};`;

const reindexedMany = (seqs: string): string => `
  DELETE FROM fabric_words WHERE rowid IN (${seqs});
  INSERT INTO fabric_words (rowid, words) SELECT seq, words FROM fabric_said WHERE seq IN (${seqs});`;

/** The fabric of a piece whose place changed, and the fabrics that lie, whole or in part, in a place that was renamed. */
const fabricOf = (row: string): string => `(SELECT fabric_seq FROM cloth_piece WHERE id = ${row}.id)`;
const FABRICS_IN_NEW_PLACE = `SELECT seq FROM fabric WHERE place_id = NEW.id
    UNION SELECT fabric_seq FROM piece_place JOIN cloth_piece ON cloth_piece.id = piece_place.id WHERE place_id = NEW.id`;

/** `changes` counts what changed among the words; while `is_waiting` many fabrics come at once, and whoever adds them catches up. */
const SEARCH_SQL = `
CREATE TABLE search_state (
  only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
  changes INTEGER NOT NULL,
  is_waiting INTEGER NOT NULL CHECK (is_waiting IN (0, 1))
) STRICT;
INSERT INTO search_state VALUES (1, 0, 0);
`;

const IS_NOT_WAITING = '(SELECT is_waiting FROM search_state) = 0';

const WORDS_SQL = `
CREATE INDEX fabric_in_place ON fabric (place_id) WHERE place_id IS NOT NULL;

CREATE VIEW fabric_said AS
  SELECT fabric.seq, fabric.name || ' ' || print || ' ' || color_words || ' ' || fiber || ' ' || supplier || ' ' || notes
    || ' ' || coalesce((SELECT path FROM place WHERE place.id = fabric.place_id), '')
    || ' ' || coalesce((SELECT group_concat(path, ' ') FROM cloth_piece
      JOIN piece_place ON piece_place.id = cloth_piece.id JOIN place ON place.id = piece_place.place_id
      WHERE cloth_piece.fabric_seq = fabric.seq), '') AS words
  FROM fabric WHERE deleted_at IS NULL;

CREATE TRIGGER fabric_words_add AFTER INSERT ON fabric WHEN NEW.deleted_at IS NULL AND ${IS_NOT_WAITING} BEGIN
  INSERT INTO fabric_words (rowid, words) SELECT seq, words FROM fabric_said WHERE seq = NEW.seq;
END;
CREATE TRIGGER fabric_words_change AFTER UPDATE ON fabric BEGIN${reindexed('NEW.seq')}
END;
CREATE TRIGGER fabric_words_remove AFTER DELETE ON fabric BEGIN
  DELETE FROM fabric_words WHERE rowid = OLD.seq;
END;
CREATE TRIGGER place_words_change AFTER UPDATE OF path ON place WHEN NEW.path IS NOT OLD.path BEGIN${reindexedMany(FABRICS_IN_NEW_PLACE)}
END;
CREATE TRIGGER piece_place_words_add AFTER INSERT ON piece_place WHEN ${IS_NOT_WAITING} BEGIN${reindexed(fabricOf('NEW'))}
END;
CREATE TRIGGER piece_place_words_change AFTER UPDATE ON piece_place BEGIN${reindexed(fabricOf('NEW'))}
END;
CREATE TRIGGER piece_place_words_remove AFTER DELETE ON piece_place BEGIN${reindexed(fabricOf('OLD'))}
END;
`;

export const kindsAndPlaces: Migration = {
  version: 80,
  says: 'An editable list of kinds, things counted in packs, and places as a tree',
  apply: (database) => {
    database.exec(KINDS_SQL);
    addStartingKinds(database);
    rebuildTable(database, 'cloth_piece', PIECE_SQL);
    dropFabricTriggers(database);
    database.exec(PLACES_SQL);
    movePlaceTexts(database);
    database.exec('ALTER TABLE fabric DROP COLUMN place');
    database.exec(SEARCH_SQL);
    database.exec(WORDS_SQL);
  },
};

function addStartingKinds(database: Database.Database): void {
  const insert = database.prepare('INSERT INTO stash_kind VALUES (?, ?, ?, ?, ?, ?, 0, ?)');
  STARTING_KIND_ROWS.forEach((row, position) => insert.run(...row, position));
}

/** The triggers name the column that goes; those that keep changes come back after every step. */
function dropFabricTriggers(database: Database.Database): void {
  const names = database
    .prepare<[], string>(`SELECT name FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = 'fabric'`)
    .pluck()
    .all();
  for (const name of names) database.exec(`DROP TRIGGER "${name}"`);
}

/** Every place that was written in words becomes one of the tree, a level for each part between commas. */
function movePlaceTexts(database: Database.Database): void {
  const ids = new Map<string, string>();
  const find = database.prepare<[string], string>('SELECT id FROM place WHERE path = ?').pluck();
  const insert = database.prepare('INSERT INTO place (id, parent_id, name, path) VALUES (?, ?, ?, ?)');
  const placeOf = (text: string): string | null => {
    let [parent, path]: [string | null, string] = [null, ''];
    for (const name of text.split(',').map((part) => part.trim())) {
      if (name === '') continue;
      path = path === '' ? name : `${path}, ${name}`;
      let id: string | undefined = ids.get(path) ?? find.get(path);
      if (id === undefined) {
        id = randomUUID();
        insert.run(id, parent, name, path);
      }
      ids.set(path, id);
      parent = id;
    }
    return parent;
  };
  const texts = database
    .prepare<[], string>(`SELECT DISTINCT place FROM fabric WHERE place <> ''`)
    .pluck()
    .all();
  const setPlace = database.prepare('UPDATE fabric SET place_id = ? WHERE place = ?');
  for (const text of texts) setPlace.run(placeOf(text), text);
  moveKeptPlaces(database, placeOf);
}

/** What undo would put back speaks of the column that goes. */
function moveKeptPlaces(database: Database.Database, placeOf: (text: string) => string | null): void {
  for (const side of ['before_json', 'after_json']) {
    const kept = database
      .prepare<[], { seq: number; place: string }>(
        `SELECT seq, json_extract(${side}, '$.place') AS place FROM change_row
        WHERE table_name = 'fabric' AND ${side} IS NOT NULL`,
      )
      .all();
    const update = database.prepare(
      `UPDATE change_row SET ${side} = json_set(json_remove(${side}, '$.place'), '$.place_id', ?) WHERE seq = ?`,
    );
    for (const { seq, place } of kept) update.run(placeOf(place), seq);
  }
}

import { randomUUID } from 'node:crypto';
import type Database from 'better-sqlite3';
import type { Migration } from './migration';

const day = (column: string): string =>
  `${column} TEXT CHECK (${column} IS NULL OR ${column} GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]')`;

const CONTACT_SQL = `
CREATE TABLE contact (
  id TEXT PRIMARY KEY NOT NULL,
  name TEXT NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 120),
  kind TEXT NOT NULL CHECK (kind IN ('longarm', 'other')),
  reach TEXT NOT NULL DEFAULT '',
  rate_minor REAL CHECK (rate_minor >= 0),
  minimum_minor REAL CHECK (minimum_minor >= 0),
  lines_json TEXT NOT NULL DEFAULT '[]' CHECK (json_type(lines_json) = 'array'),
  promised_days INTEGER CHECK (promised_days >= 0),
  notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX contact_by_name ON contact (name COLLATE NOCASE, id);
`;

const TRIP_SQL = `
CREATE TABLE trip_to_contact (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  stage_id TEXT NOT NULL REFERENCES stage (id) ON DELETE CASCADE,
  contact_id TEXT NOT NULL REFERENCES contact (id),
  parcel_id TEXT NOT NULL,
  ${day('sent_on')},
  ${day('promised_on')},
  ${day('back_on')},
  tracking_number TEXT NOT NULL,
  backing TEXT NOT NULL DEFAULT '',
  batting TEXT NOT NULL DEFAULT '',
  thread TEXT NOT NULL DEFAULT '',
  pattern_name TEXT NOT NULL DEFAULT '',
  sent_along TEXT NOT NULL,
  asked_for TEXT NOT NULL,
  price_asked_minor INTEGER CHECK (price_asked_minor >= 0),
  price_minor INTEGER CHECK (price_minor >= 0),
  packing_json TEXT NOT NULL DEFAULT '[]' CHECK (json_type(packing_json) = 'array'),
  CHECK (back_on IS NULL OR sent_on IS NULL OR back_on >= sent_on)
) STRICT;
INSERT INTO trip_to_contact (seq, id, stage_id, contact_id, parcel_id, sent_on, promised_on, back_on,
    tracking_number, sent_along, asked_for, price_minor)
  SELECT seq, id, stage_id, (SELECT contact.id FROM contact WHERE contact.name = with_whom), id, sent_on, promised_on, back_on,
    tracking_number, sent_along, asked_for, price_minor FROM trip;
DROP TABLE trip;
ALTER TABLE trip_to_contact RENAME TO trip;
CREATE INDEX trip_of_stage ON trip (stage_id);
CREATE INDEX trip_of_contact ON trip (contact_id);
CREATE INDEX trip_of_parcel ON trip (parcel_id);

CREATE TABLE trip_event (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  trip_id TEXT NOT NULL REFERENCES trip (id) ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('packed', 'arrived', 'on-the-frame', 'ready', 'sent-back', 'heard')),
  on_day TEXT NOT NULL CHECK (on_day GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX event_of_trip ON trip_event (trip_id, on_day, seq);

ALTER TABLE photo ADD COLUMN trip_id TEXT REFERENCES trip (id) ON DELETE CASCADE;
ALTER TABLE photo ADD COLUMN moment TEXT CHECK (moment IN ('before', 'after'));
CREATE INDEX photo_of_trip ON photo (trip_id) WHERE trip_id IS NOT NULL;
`;

/**
 * Whoever a trip named in words becomes a contact of that very name, one for every spelling, so that nothing is lost. The rows
 * that undo would put back are brought along, for names that stand nowhere else any more too.
 */
export const contacts: Migration = {
  version: 50,
  says: 'Contacts, and trips that refer to them, with what went along and what was heard',
  apply: (database) => {
    database.exec(CONTACT_SQL);
    addContacts(database);
    for (const column of ['before_json', 'after_json'] as const) bringUndoAlong(database, column);
    database.exec(TRIP_SQL);
  },
};

function addContacts(database: Database.Database): void {
  const named = `
    SELECT with_whom AS name, stage_id FROM trip
    UNION SELECT before_json ->> '$.with_whom', before_json ->> '$.stage_id' FROM change_row WHERE table_name = 'trip' AND before_json IS NOT NULL
    UNION SELECT after_json ->> '$.with_whom', after_json ->> '$.stage_id' FROM change_row WHERE table_name = 'trip' AND after_json IS NOT NULL`;
  const rows = database
    .prepare<[], { name: string; quilts: number }>(
      `SELECT named.name, max(coalesce(stage.kind = 'longarm', 0)) AS quilts
      FROM (${named}) AS named LEFT JOIN stage ON stage.id = named.stage_id GROUP BY named.name ORDER BY named.name`,
    )
    .all();
  const insert = database.prepare('INSERT INTO contact (id, name, kind) VALUES (?, ?, ?)');
  for (const { name, quilts } of rows) insert.run(randomUUID(), name, quilts === 1 ? 'longarm' : 'other');
}

function bringUndoAlong(database: Database.Database, column: 'before_json' | 'after_json'): void {
  database.exec(`
    UPDATE change_row SET ${column} = json_remove(json_set(${column},
        '$.contact_id', (SELECT id FROM contact WHERE name = ${column} ->> '$.with_whom'), '$.parcel_id', ${column} ->> '$.id'),
      '$.with_whom')
    WHERE table_name = 'trip' AND ${column} IS NOT NULL`);
}

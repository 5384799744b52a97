import type { Migration } from './migration';

/** A step's bookings are named by the first of their line: one that was taken back and booked again is still the same. */
const SQL = `
CREATE TABLE cutting_plan (
  id TEXT PRIMARY KEY NOT NULL,
  project_id TEXT NOT NULL UNIQUE REFERENCES project (id) ON DELETE CASCADE,
  plan_json TEXT NOT NULL CHECK (json_type(plan_json) = 'object'),
  kept_at INTEGER NOT NULL
) STRICT;

CREATE TABLE cut_step (
  id TEXT PRIMARY KEY NOT NULL,
  plan_id TEXT NOT NULL REFERENCES cutting_plan (id) ON DELETE CASCADE,
  piece_id TEXT NOT NULL REFERENCES cloth_piece (id),
  place INTEGER NOT NULL CHECK (place >= 0),
  parts INTEGER NOT NULL CHECK (parts > 0),
  on_date TEXT NOT NULL CHECK (on_date GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'),
  bookings_json TEXT NOT NULL CHECK (json_type(bookings_json) = 'array'),
  UNIQUE (plan_id, piece_id, place)
) STRICT;
`;

export const cuttingPlans: Migration = {
  version: 40,
  says: 'Cutting plans with what was cut by them',
  apply: (database) => {
    database.exec(SQL);
  },
};

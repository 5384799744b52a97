import type { Migration } from './migration';

/** A row without minutes is the running clock; there is never more than one. */
const WORK_SQL = `
CREATE TABLE work (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  stage_id TEXT NOT NULL REFERENCES stage (id) ON DELETE CASCADE,
  on_day TEXT NOT NULL CHECK (on_day GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'),
  started_at INTEGER,
  minutes INTEGER CHECK (minutes > 0),
  done_what TEXT CHECK (done_what IN ('blocks', 'hand', 'cuts')),
  done_amount INTEGER CHECK (done_amount > 0),
  note TEXT NOT NULL,
  CHECK (minutes IS NOT NULL OR started_at IS NOT NULL),
  CHECK ((done_what IS NULL) = (done_amount IS NULL))
) STRICT;
CREATE UNIQUE INDEX one_clock_runs ON work ((minutes IS NULL)) WHERE minutes IS NULL;
CREATE INDEX work_of_stage ON work (stage_id, on_day, seq);
`;

export const workOfStages: Migration = {
  version: 60,
  says: 'Work by the clock and by hand, with what got done in it',
  apply: (database) => {
    database.exec(WORK_SQL);
  },
};

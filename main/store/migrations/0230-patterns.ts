import type { Migration } from './migration';

/** The file of a pattern is beside the workshop file, under the hash of its content like a photo. */
const SQL = `
CREATE TABLE pattern (
  id TEXT PRIMARY KEY NOT NULL,
  project_id TEXT NOT NULL UNIQUE REFERENCES project (id) ON DELETE CASCADE,
  pattern_name TEXT NOT NULL,
  page TEXT NOT NULL,
  place TEXT NOT NULL,
  list_text TEXT NOT NULL,
  bare_unit TEXT NOT NULL CHECK (bare_unit IN ('in', 'cm', 'mm')),
  fabrics_json TEXT NOT NULL CHECK (json_type(fabrics_json) = 'array'),
  file_json TEXT CHECK (file_json IS NULL OR json_type(file_json) = 'object')
) STRICT;
`;

export const patterns: Migration = {
  version: 230,
  says: 'The pattern that a project follows, with its cutting list',
  apply: (database) => {
    database.exec(SQL);
  },
};

import type { Migration } from './migration';

const SEARCH_SQL = `
CREATE TABLE stash_search (
  id TEXT PRIMARY KEY NOT NULL,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  asked_json TEXT NOT NULL CHECK (json_type(asked_json) = 'object'),
  position INTEGER NOT NULL
) STRICT;

CREATE INDEX fabric_by_supplier ON fabric (supplier COLLATE NOCASE) WHERE deleted_at IS NULL;
CREATE INDEX fabric_by_color ON fabric (color_words) WHERE deleted_at IS NULL;
`;

export const savedSearches: Migration = {
  version: 120,
  says: 'Searches of the stash kept by name, and what its groups are found by',
  apply: (database) => {
    database.exec(SEARCH_SQL);
  },
};

import type { Migration } from './migration';

/** What is to be bought is worked out; only what the maker says of it is kept. A fabric that is taken away takes the choice of it along. */
const SQL = `
CREATE TABLE need_choice (
  id TEXT PRIMARY KEY NOT NULL,
  project_id TEXT NOT NULL REFERENCES project (id) ON DELETE CASCADE,
  source TEXT NOT NULL CHECK (length(source) BETWEEN 1 AND 160),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  choice TEXT NOT NULL CHECK (choice IN ('fabric', 'new-cloth', 'leave-out')),
  fabric_id TEXT REFERENCES fabric (id) ON DELETE CASCADE,
  CHECK ((choice = 'fabric') = (fabric_id IS NOT NULL)),
  UNIQUE (project_id, source, name)
) STRICT;
CREATE INDEX choice_of_fabric ON need_choice (fabric_id) WHERE fabric_id IS NOT NULL;

CREATE TABLE shopping_line (
  id TEXT PRIMARY KEY NOT NULL,
  words TEXT NOT NULL CHECK (length(words) BETWEEN 1 AND 120),
  how_much TEXT NOT NULL,
  supplier TEXT NOT NULL,
  project_id TEXT REFERENCES project (id) ON DELETE SET NULL,
  added_at INTEGER NOT NULL
) STRICT;
CREATE INDEX shopping_for_project ON shopping_line (project_id) WHERE project_id IS NOT NULL;
`;

export const shoppingList: Migration = {
  version: 130,
  says: 'A shopping list: the maker’s own lines, and the cloth she chose for what a project needs',
  apply: (database) => {
    database.exec(SQL);
  },
};

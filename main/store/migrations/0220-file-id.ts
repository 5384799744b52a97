import type { Migration } from './migration';

/** Of a file from before nothing is known but that it is not another file. */
export const fileId: Migration = {
  version: 220,
  says: 'The file has a name of its own, so that what is typed and not saved yet belongs to it',
  apply: (database) => {
    database.exec(`
      CREATE TABLE workshop_file (only_row INTEGER PRIMARY KEY CHECK (only_row = 1), id TEXT NOT NULL) STRICT;
      INSERT INTO workshop_file VALUES (1, lower(hex(randomblob(16))));
    `);
  },
};

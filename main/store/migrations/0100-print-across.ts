import type { Migration } from './migration';

/** A piece without a row has its print along its length, as it comes off the roll. */
const SQL = `
CREATE TABLE piece_print (
  id TEXT PRIMARY KEY NOT NULL REFERENCES cloth_piece (id),
  runs TEXT NOT NULL CHECK (runs IN ('along', 'across'))
) STRICT;
`;

export const printAcross: Migration = {
  version: 100,
  says: 'Pieces of cloth whose print runs across them',
  apply: (database) => {
    database.exec(SQL);
  },
};

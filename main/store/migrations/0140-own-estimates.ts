import type { Migration } from './migration';

export const ownEstimates: Migration = {
  version: 140,
  says: 'Stages whose hours the maker set herself, whatever her own rates say',
  apply: (database) => {
    database.exec(
      'ALTER TABLE stage ADD COLUMN is_own_estimate INTEGER NOT NULL DEFAULT 0 CHECK (is_own_estimate IN (0, 1))',
    );
  },
};

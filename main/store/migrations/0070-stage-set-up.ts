import type { Migration } from './migration';

const STAGE_SQL = `
ALTER TABLE stage ADD COLUMN is_beside INTEGER NOT NULL DEFAULT 0 CHECK (is_beside IN (0, 1));
ALTER TABLE stage ADD COLUMN calculators_json TEXT
  CHECK (calculators_json IS NULL OR json_type(calculators_json) = 'array');
`;

export const stageSetUp: Migration = {
  version: 70,
  says: 'Stages that may run side by side, with calculators of their own choice',
  apply: (database) => {
    database.exec(STAGE_SQL);
  },
};

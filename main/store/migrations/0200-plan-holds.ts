import type { Migration } from './migration';

/** A plan saved before sets nothing aside until it is saved again: what is free by then is not known here. */
export const planHolds: Migration = {
  version: 200,
  says: 'What a saved cutting plan sets aside, so that it can be released with the plan',
  apply: (database) => {
    database.exec(
      `ALTER TABLE cutting_plan ADD COLUMN holds_json TEXT NOT NULL DEFAULT '[]'
        CHECK (json_type(holds_json) = 'array')`,
    );
  },
};

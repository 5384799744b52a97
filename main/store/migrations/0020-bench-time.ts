import type { Migration } from './migration';

/** The hours a workshop starts with, as they were when this step was written. */
const STARTING = '{"weekMinutes":[60,60,60,60,60,180,180],"daysOff":[]}';

/** When the maker sews: a column of the workshop's one row, so that it is changed and undone with it. */
export const benchTimeOfWorkshop: Migration = {
  version: 20,
  says: 'The hours at the bench on each weekday, and the days off',
  apply: (database) => {
    database.exec(
      `ALTER TABLE workshop ADD COLUMN bench_time_json TEXT NOT NULL DEFAULT '${STARTING}'
        CHECK (json_type(bench_time_json) = 'object')`,
    );
  },
};

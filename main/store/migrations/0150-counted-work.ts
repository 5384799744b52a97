import type { Migration } from './migration';

/** The maker's own rates come from all work in which something was counted; days are planned by them after every change. */
const SQL = `
CREATE INDEX work_counted ON work (seq, minutes, done_what, done_amount)
  WHERE minutes IS NOT NULL AND done_what IS NOT NULL;
`;

export const countedWork: Migration = {
  version: 150,
  says: 'Work in which something was counted is found without the rest',
  apply: (database) => {
    database.exec(SQL);
  },
};

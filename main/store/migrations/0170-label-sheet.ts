import type { Migration } from './migration';

/** The labels a workshop starts with, as they were when this step was written. */
const STARTING =
  '{"across":3,"down":5,"width":20320,"height":14224,"gapAcross":1016,"gapDown":1016,"left":3048,"top":6096}';

/** How labels lie on the maker's sheets: a column of the workshop's one row, so that it is changed and undone with it. */
export const labelSheetOfWorkshop: Migration = {
  version: 170,
  says: 'How the labels for pieces of cloth lie on a sheet',
  apply: (database) => {
    database.exec(
      `ALTER TABLE workshop ADD COLUMN label_sheet_json TEXT NOT NULL DEFAULT '${STARTING}'
        CHECK (json_type(label_sheet_json) = 'object')`,
    );
  },
};

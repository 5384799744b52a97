import type { Migration } from './migration';

/**
 * What a project took of a fabric at the cost of the cloth that came in first, so that a project's page need not walk the whole
 * ledger of each of its fabrics. Any booking of a fabric forgets what was counted for it; null is counted when it is asked for.
 */
const FIRST_IN_SQL = `
ALTER TABLE project_use ADD COLUMN first_in_minor INTEGER;

CREATE TRIGGER first_in_forgotten AFTER INSERT ON booking BEGIN
  UPDATE project_use SET first_in_minor = NULL WHERE fabric_seq = NEW.fabric_seq AND first_in_minor IS NOT NULL;
END;

CREATE INDEX entry_bought ON ledger_entry (piece_seq) WHERE kind = 'bought';
`;

export const firstIn: Migration = {
  version: 110,
  says: 'What a project took of a fabric at the cost of what came in first is kept until the next booking of that fabric',
  apply: (database) => {
    database.exec(FIRST_IN_SQL);
  },
};

import type Database from 'better-sqlite3';
import type { Migration } from './migration';
import { rebuildTable } from './rebuild-table';

/** Values that stand in kept answers, plans and wishes as a whole string, and their names from this step on. */
const NEW_VALUES: Readonly<Record<string, string>> = {
  'cloth-alternate': 'fabric-alternate',
  'least-cloth': 'least-fabric',
  'new-cloth': 'new-fabric',
  'no-cloth': 'no-fabric',
  'up-the-cloth': 'up-the-fabric',
  'across-the-cloth': 'across-the-fabric',
  'wider-than-any-cloth': 'wider-than-any-fabric',
  'longer-than-any-cloth': 'longer-than-any-fabric',
  'wider-cloth': 'wider-fabric',
  'longer-cloth': 'longer-fabric',
  'cloth-width': 'fabric-width',
  Freight: 'Shipping',
};

/** Keys of kept answers and plans, and their names from this step on. */
const NEW_KEYS: Readonly<Record<string, string>> = {
  clothLength: 'fabricLength',
  clothWidth: 'fabricWidth',
  clothToBuy: 'fabricToBuy',
  clothWeight: 'fabricWeight',
  leastClothLength: 'leastFabricLength',
  falling: 'downToRight',
  rising: 'upToRight',
  joint: 'join',
  sash: 'sashing',
};

/** The bias from a given piece names the size of that piece. */
const NEW_KEYS_OF_BIAS_STRIPS: Readonly<Record<string, string>> = {
  clothLength: 'pieceLength',
  clothWidth: 'pieceWidth',
};

/** Keys whose value is one of a few codes, one of them the bare word. */
const CODE_KEYS = new Set(['tone', 'source']);

/** Columns that hold JSON of the maker's answers and plans; in `change_row` they lie inside the JSON of a row. */
const JSON_COLUMNS = new Set(['input_json', 'own_input_json', 'answer_json', 'plan_json']);

/** The starting kinds whose names are not what a quilter says, by id, with their old and new names. */
const NEW_KIND_NAMES: readonly (readonly [id: string, old: string, name: string])[] = [
  ['8d0b6c1e-52f4-4c0a-9b57-3f1e6a70c000', 'Off the roll', 'By the yard'],
  ['8d0b6c1e-52f4-4c0a-9b57-3f1e6a70c009', 'Bias, made up', 'Premade bias'],
  ['8d0b6c1e-52f4-4c0a-9b57-3f1e6a70c00c', 'Batting off the roll', 'Batting by the yard'],
  ['8d0b6c1e-52f4-4c0a-9b57-3f1e6a70c010', 'Batting, double package', 'Batting, full package'],
];

const NEED_CHOICE_SQL = `CREATE TABLE need_choice (
  id TEXT PRIMARY KEY NOT NULL,
  project_id TEXT NOT NULL REFERENCES project (id) ON DELETE CASCADE,
  source TEXT NOT NULL CHECK (length(source) BETWEEN 1 AND 160),
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  choice TEXT NOT NULL CHECK (choice IN ('fabric', 'new-fabric', 'leave-out')),
  fabric_id TEXT REFERENCES fabric (id) ON DELETE CASCADE,
  CHECK ((choice = 'fabric') = (fabric_id IS NOT NULL)),
  UNIQUE (project_id, source, name)
) STRICT`;

/** The words of the glossary in the file too: the material is fabric, and a measured length of it is a piece of fabric. */
export const plainNames: Migration = {
  version: 180,
  says: 'Fabric is called fabric in tables, kept answers, plans and history',
  apply: (database) => {
    database.exec('ALTER TABLE cloth_piece RENAME TO fabric_piece');
    renameChoices(database);
    renameInTable(database, 'calculation');
    renameInTable(database, 'cutting_plan');
    renameInHistory(database);
    renameStartingKinds(database);
  },
};

function renameChoices(database: Database.Database): void {
  // The rows are copied under the new CHECK before they are renamed.
  database.pragma('ignore_check_constraints = ON');
  try {
    rebuildTable(database, 'need_choice', NEED_CHOICE_SQL);
    withoutChangeTrigger(database, 'need_choice', () => {
      database.exec(`UPDATE need_choice SET choice = 'new-fabric' WHERE choice = 'new-cloth';
        UPDATE need_choice SET source = replace(source, '/cloth-width', '/fabric-width') WHERE source LIKE '%/cloth-width';
        UPDATE need_choice SET name = 'Thread for hand sewing' WHERE name = 'Thread for the hand'`);
    });
  } finally {
    database.pragma('ignore_check_constraints = OFF');
  }
}

/** Renames the starting kinds that still have their old name; a name the maker chose stays. */
function renameStartingKinds(database: Database.Database): void {
  const update = database.prepare('UPDATE stash_kind SET name = ? WHERE id = ? AND name = ?');
  withoutChangeTrigger(database, 'stash_kind', () => {
    for (const [id, old, name] of NEW_KIND_NAMES) update.run(name, id, old);
  });
}

/** Renames codes and keys in the rows of a table as they are now. */
function renameInTable(database: Database.Database, table: string): void {
  const rows = database
    .prepare<[], Readonly<Record<string, unknown>>>(`SELECT rowid AS row, * FROM ${table}`)
    .all();
  withoutChangeTrigger(database, table, () => {
    for (const { row, ...before } of rows) {
      const after = renameRow(before);
      const changed = Object.keys(after).filter((column) => after[column] !== before[column]);
      if (changed.length === 0) continue;
      const set = changed.map((column) => `${column} = ?`).join(', ');
      database
        .prepare(`UPDATE ${table} SET ${set} WHERE rowid = ?`)
        .run(...changed.map((column) => after[column]), row);
    }
  });
}

/** Renames them in the rows that undo would put back. */
function renameInHistory(database: Database.Database): void {
  const rows = database
    .prepare<
      [],
      { readonly seq: number; readonly before_json: string | null; readonly after_json: string | null }
    >(
      `SELECT seq, before_json, after_json FROM change_row
        WHERE table_name IN ('calculation', 'cutting_plan', 'need_choice')`,
    )
    .all();
  const update = database.prepare('UPDATE change_row SET before_json = ?, after_json = ? WHERE seq = ?');
  const renamed = (json: string | null): string | null =>
    json === null ? null : JSON.stringify(renameRow(JSON.parse(json) as Record<string, unknown>));
  for (const { seq, before_json: before, after_json: after } of rows) {
    update.run(renamed(before), renamed(after), seq);
  }
}

function renameRow(row: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const keys = row['calculator'] === 'bias-strips' ? { ...NEW_KEYS, ...NEW_KEYS_OF_BIAS_STRIPS } : NEW_KEYS;
  return Object.fromEntries(
    Object.entries(row).map(([column, value]) => {
      if (JSON_COLUMNS.has(column) && typeof value === 'string') {
        return [column, JSON.stringify(renamed(JSON.parse(value), keys))];
      }
      if (column === 'name' && value === 'Thread for the hand') return [column, 'Thread for hand sewing'];
      if ((column === 'calculator' || column === 'choice') && typeof value === 'string') {
        return [column, NEW_VALUES[value] ?? value];
      }
      return [column, value];
    }),
  );
}

function renamed(value: unknown, keys: Readonly<Record<string, string>>): unknown {
  if (typeof value === 'string') return NEW_VALUES[value] ?? value;
  if (Array.isArray(value)) return value.map((one) => renamed(one, keys));
  if (typeof value !== 'object' || value === null) return value;
  // Drawings and cutting plans have parts of their own; only a block of a top has a name and a length too.
  const isBlock = 'name' in value && 'length' in value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]: [string, unknown]) => [
      isBlock && key === 'parts' ? 'units' : renamedKey(key, one, keys),
      CODE_KEYS.has(key) && one === 'cloth' ? 'fabric' : renamed(one, keys),
    ]),
  );
}

/** `cloth` was the list of choices of a plan, the lengths an answer needs of each fabric, one such length, or the fabric of a panel. */
function renamedKey(key: string, value: unknown, keys: Readonly<Record<string, string>>): string {
  if (key !== 'cloth') return keys[key] ?? key;
  if (typeof value === 'number') return 'length';
  if (!Array.isArray(value)) return 'fabric';
  const isPlan =
    value.length === 0 || 'fabricId' in (value[0] as object) || 'projectId' in (value[0] as object);
  return isPlan ? 'fabricChoices' : 'fabricLengths';
}

/** The step is no change of the maker's, so the table's updates are not kept for undo; the trigger is put back after every step. */
function withoutChangeTrigger(database: Database.Database, table: string, work: () => void): void {
  database.exec(`DROP TRIGGER IF EXISTS ${table}_change_update`);
  work();
}

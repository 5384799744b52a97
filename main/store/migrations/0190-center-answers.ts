import type Database from 'better-sqlite3';
import type { Migration } from './migration';

type Fields = Readonly<Record<string, unknown>>;

/** Fields of a saved answer that now stand together under one name, as one of several ways to answer. */
interface Grouped {
  readonly name: string;
  readonly way: Fields;
  readonly fields: readonly string[];
  /** Fields that nothing reads any more. */
  readonly dropped: readonly string[];
}

const GROUPED: Readonly<Record<string, Grouped>> = {
  'center-clearance': {
    name: 'middle',
    way: { what: 'one-patch' },
    fields: ['patchShape', 'patchAcross', 'patchSides', 'offsetAcross', 'offsetDown', 'accuracy'],
    dropped: ['cutStep'],
  },
  'center-find': {
    name: 'measured',
    way: { way: 'four-sides' },
    fields: [
      ...['top', 'right', 'bottom', 'left', 'downToRight', 'upToRight'],
      ...['hasMotif', 'motifFromLeft', 'motifFromTop'],
    ],
    dropped: [],
  },
};

/** Answers about the center keep their numbers: they are one of several ways to answer from here on. */
export const centerAnswers: Migration = {
  version: 190,
  says: 'Saved answers about the center say in which way they were measured',
  apply: (database) => {
    groupInTable(database);
    groupInHistory(database);
  },
};

function groupInTable(database: Database.Database): void {
  const rows = database.prepare<[], Fields>('SELECT rowid AS row, * FROM calculation').all();
  // The step is no change of the maker's, so it is not kept for undo; the trigger is put back after every step.
  database.exec('DROP TRIGGER IF EXISTS calculation_change_update');
  const update = database.prepare(
    'UPDATE calculation SET input_json = ?, own_input_json = ? WHERE rowid = ?',
  );
  for (const { row, ...before } of rows) {
    const after = groupedRow(before);
    if (after !== before) update.run(after['input_json'], after['own_input_json'], row);
  }
}

/** The rows that undo would put back. */
function groupInHistory(database: Database.Database): void {
  const rows = database
    .prepare<
      [],
      { readonly seq: number; readonly before_json: string | null; readonly after_json: string | null }
    >(`SELECT seq, before_json, after_json FROM change_row WHERE table_name = 'calculation'`)
    .all();
  const update = database.prepare('UPDATE change_row SET before_json = ?, after_json = ? WHERE seq = ?');
  const grouped = (json: string | null): string | null =>
    json === null ? null : JSON.stringify(groupedRow(JSON.parse(json) as Fields));
  for (const { seq, before_json: before, after_json: after } of rows) {
    update.run(grouped(before), grouped(after), seq);
  }
}

/** The same row where there is nothing to group. */
function groupedRow(row: Fields): Fields {
  const { calculator, input_json: inputJson, own_input_json: ownJson } = row;
  const grouped = typeof calculator === 'string' ? GROUPED[calculator] : undefined;
  if (grouped === undefined || typeof inputJson !== 'string' || typeof ownJson !== 'string') return row;
  const input = JSON.parse(inputJson) as Fields;
  const own = JSON.parse(ownJson) as Fields;
  return {
    ...row,
    input_json: JSON.stringify(groupedFields(grouped, input, input)),
    own_input_json: JSON.stringify(groupedFields(grouped, own, { ...input, ...own })),
  };
}

/** The group takes all its fields from `whole`, since it is the maker's own as soon as one of them is. */
function groupedFields({ name, way, fields, dropped }: Grouped, given: Fields, whole: Fields): Fields {
  const left = Object.entries(given).filter(([key]) => !fields.includes(key) && !dropped.includes(key));
  if (!fields.some((key) => Object.hasOwn(given, key))) return Object.fromEntries(left);
  const taken = fields.filter((key) => Object.hasOwn(whole, key)).map((key) => [key, whole[key]] as const);
  return { ...Object.fromEntries(left), [name]: { ...way, ...Object.fromEntries(taken) } };
}

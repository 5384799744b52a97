import type { z } from 'zod';
import { describe, expect, it } from 'vitest';
import { workMeasureSchema } from '#core/domain/clock';
import { contactKindSchema } from '#core/domain/contact';
import { photoMomentSchema } from '#core/domain/photo';
import { projectPurposeSchema } from '#core/domain/project';
import { stageKindSchema, stageStateSchema } from '#core/domain/stage';
import { entryKindSchema, pieceKindSchema, printDirectionSchema, printRunsSchema } from '#core/domain/stash';
import { tripEventKindSchema } from '#core/domain/trip';
import { themeSchema } from '#core/domain/workshop';
import { UNDOABLE_TABLES } from '#main/store/history/undoable-tables';
import { STAGE_RECORD_TABLES } from '#main/store/projects/follow-plan';
import { hasKind, kindBits, PIECE_KIND_BITS } from '#main/store/stash/piece-kind-bits';
import { openWorkshop } from '#test/helpers/workshop';

interface Table {
  readonly name: string;
  readonly sql: string;
  readonly columns: readonly string[];
}

/** The tables of a new workshop, which has the newest schema. */
function tablesOfSchema(): readonly Table[] {
  const { database } = openWorkshop().context.store;
  return database
    .prepare<[], { name: string; sql: string }>(
      "SELECT name, sql FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
    )
    .all()
    .map(({ name, sql }) => ({
      name,
      sql,
      columns: database
        .prepare<[string], string>('SELECT name FROM pragma_table_info(?)')
        .pluck()
        .all(name) as unknown as readonly string[],
    }));
}

function tableNamed(name: string): Table {
  const table = tablesOfSchema().find((one) => one.name === name);
  if (table === undefined) throw new Error(`No table ${name}`);
  return table;
}

/** Why undo does not put the rows of a table back. */
const NOT_UNDOABLE: Readonly<Record<string, string>> = {
  booking: 'Ledger: undo books the opposite.',
  ledger_entry: 'Ledger: undo books the opposite.',
  fabric_piece: 'Ledger: a piece without entries is as good as none.',
  change_log: 'The history itself.',
  change_row: 'The history itself.',
  change_booking: 'The history itself.',
  current_change: 'The history itself.',
  piece_sum: 'Derived from the ledger by triggers.',
  piece_hold: 'Derived from the ledger by triggers.',
  project_use: 'Derived from the ledger by triggers.',
  shelf: 'Derived from fabrics and the ledger by triggers.',
  search_state: 'State of the search index.',
  workshop_file: 'What the file is, not what is in it.',
  fabric_words: 'Search index.',
  fabric_words_config: 'Search index.',
  fabric_words_data: 'Search index.',
  fabric_words_docsize: 'Search index.',
  fabric_words_idx: 'Search index.',
  fabric_vocabulary: 'Search index.',
  picture: 'Thumbnails by content: a photo that comes back finds its own again.',
};

/** Why a row with a stage is not simply a record of the stage. */
const NO_STAGE_RECORD: Readonly<Record<string, string>> = {
  checklist_item: 'Only a checked line is a record; the query asks for it.',
};

describe('a table of the schema', () => {
  it('is either undoable or has a reason why not', () => {
    const listed = [...UNDOABLE_TABLES, ...Object.keys(NOT_UNDOABLE)].sort();
    expect(
      tablesOfSchema()
        .map(({ name }) => name)
        .sort(),
    ).toEqual(listed);
  });

  it('with a stage counts as a record of it, or has a reason why not', () => {
    const withStage = tablesOfSchema().filter(({ columns }) => columns.includes('stage_id'));
    expect(withStage.map(({ name }) => name).sort()).toEqual(
      [...STAGE_RECORD_TABLES, ...Object.keys(NO_STAGE_RECORD)].sort(),
    );
  });
});

/** The values that the CHECK of a column allows. */
function allowedValues(table: string, column: string): readonly string[] {
  const { sql } = tableNamed(table);
  const list = new RegExp(`\\b${column} IN \\(((?:\\s*'[^']*',?)+)\\s*\\)`).exec(sql)?.[1];
  if (list === undefined) throw new Error(`No list of values for ${table}.${column}`);
  return [...list.matchAll(/'([^']*)'/g)].map(([, value]) => value ?? '');
}

describe('the values a column allows', () => {
  it.each<[table: string, column: string, schema: z.ZodEnum]>([
    ['stage', 'kind', stageKindSchema],
    ['checklist_item', 'closed_by', stageKindSchema],
    ['stage', 'state', stageStateSchema],
    ['stage_event', 'from_state', stageStateSchema],
    ['stage_event', 'to_state', stageStateSchema],
    ['fabric_piece', 'kind', pieceKindSchema],
    ['stash_kind', 'form', pieceKindSchema],
    ['fabric', 'direction', printDirectionSchema],
    ['piece_print', 'runs', printRunsSchema],
    ['project', 'purpose', projectPurposeSchema],
    ['contact', 'kind', contactKindSchema],
    ['trip_event', 'kind', tripEventKindSchema],
    ['work', 'done_what', workMeasureSchema],
    ['photo', 'moment', photoMomentSchema],
    ['workshop', 'theme', themeSchema],
  ])('of %s.%s are those of its schema in the core', (table, column, schema) => {
    expect([...allowedValues(table, column)].sort()).toEqual([...schema.options].map(String).sort());
  });

  it('of ledger_entry.kind are those of its schema in the core', () => {
    const cases = /CASE kind([\s\S]*?)END/.exec(tableNamed('ledger_entry').sql)?.[1] ?? '';
    const kinds = [...cases.matchAll(/WHEN '([a-z-]+)'/g)].map(([, kind]) => kind);
    expect(new Set(kinds)).toEqual(new Set(entryKindSchema.options));
  });
});

describe('the bits of the kinds of piece', () => {
  it('are those of the schema', () => {
    const { database } = openWorkshop().context.store;
    const sql = database
      .prepare<[], string>("SELECT sql FROM sqlite_schema WHERE name = 'shelf_line'")
      .pluck()
      .get() as unknown as string;
    const bits = [...sql.matchAll(/WHEN '([a-z-]+)' THEN (\d+)/g)].map(([, kind, bit]) => [
      kind,
      Number(bit),
    ]);
    expect(Object.fromEntries(bits)).toEqual(PIECE_KIND_BITS);
  });

  it('are one for each kind', () => {
    const bits = Object.values(PIECE_KIND_BITS);
    expect(new Set(bits).size).toBe(bits.length);
    expect(bits.every((bit) => Number.isInteger(Math.log2(bit)))).toBe(true);
    const both = kindBits(['yardage', 'thread']);
    expect(pieceKindSchema.options.filter((kind) => hasKind(both, kind))).toEqual(['yardage', 'thread']);
  });
});

import fs from 'node:fs';
import path from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const SAMPLE = path.resolve(import.meta.dirname, '../../../fixtures/workshop-of-step-170.sqlite.br');
/** Tables derived from others, and the search engine's own. */
const WORKED_OUT = /^(sqlite_|fabric_words|fabric_vocabulary|shelf$|search_state$)/;

/** The demo workshop with 700 random changes, written by the program at version 170. */
function sampleWorkshop(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  fs.writeFileSync(file, brotliDecompressSync(fs.readFileSync(SAMPLE)));
  return file;
}

function rowCounts(file: string): ReadonlyMap<string, number> {
  const database = new Database(file, { readonly: true });
  const tables = database
    .prepare<[], string>(`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`)
    .pluck()
    .all();
  const counts = tables
    .filter((table) => !WORKED_OUT.test(table))
    .map((table): [string, number] => [
      table.replace('cloth_piece', 'fabric_piece'),
      database.prepare<[], number>(`SELECT count(*) FROM ${table}`).pluck().get() ?? 0,
    ]);
  database.close();
  return new Map(counts);
}

describe('a workshop of version 170', () => {
  test('opens with all its rows', () => {
    const file = sampleWorkshop();
    const before = rowCounts(file);
    openWorkshop(file);
    const after = rowCounts(file);
    expect([...before.values()].reduce((sum, count) => sum + count, 0)).toBeGreaterThan(3_000);
    for (const [table, count] of before) expect([table, after.get(table)]).toEqual([table, count]);
  });

  test('names the starting kinds as quilters do, unless the maker renamed them', () => {
    const names = openWorkshop(sampleWorkshop())
      .get('kind:list', {})
      .map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['By the yard', 'Batting by the yard']));
    expect(names).not.toContain('Off the roll');
    expect(names).not.toContain('Batting off the roll');
    // In the sample the maker renamed premade bias and one batting package.
    expect(names).not.toContain('Premade bias');
    expect(names).not.toContain('Batting, full package');
  });

  test('has only the new names in saved answers, plans, choices and history', () => {
    const { context } = openWorkshop(sampleWorkshop());
    const columns = [
      ['calculation', 'calculator || input_json || own_input_json || answer_json'],
      ['cutting_plan', 'plan_json'],
      ['need_choice', 'choice || source'],
      [
        `(SELECT * FROM change_row WHERE table_name IN ('calculation', 'cutting_plan', 'need_choice'))`,
        `coalesce(before_json, '') || coalesce(after_json, '')`,
      ],
    ] as const;
    for (const [table, text] of columns) {
      const texts = context.store.database.prepare<[], string>(`SELECT ${text} FROM ${table}`).pluck().all();
      expect(texts.length).toBeGreaterThan(0);
      // Only keys and codes: a label such as "Cloth to buy" is part of the answer as it was saved.
      expect(
        texts.filter((one) => /"[a-z]*[cC]loth[A-Za-z]*\\?":|"[a-z-]*-cloth\\?"|"cloth-/.test(one)),
      ).toEqual([]);
      expect(texts.filter((one) => /"(falling|rising|joint|sash)\\?":/.test(one))).toEqual([]);
    }
  });

  test('shows its saved answers, its cutting plan and its choices', () => {
    const workshop = openWorkshop(sampleWorkshop());
    const projects = workshop.get('project:list', { archived: false }).items;
    const kept = projects.flatMap(({ project }) =>
      workshop
        .get('project:open', { projectId: project.id })
        .stages.flatMap(({ id: stageId }) => workshop.get('calculation:list', { stageId })),
    );
    expect(kept.length).toBeGreaterThan(100);
    expect(new Set(kept.map(({ calculator }) => calculator))).toContain('fabric-width');
    const plans = projects.flatMap(
      ({ project }) => workshop.get('cutting:open', { projectId: project.id }) ?? [],
    );
    expect(plans.map(({ plan, ticked }) => [plan.setup.fabricChoices.length, ticked.length])).toEqual([
      [1, 2],
    ]);
    const list = workshop.get('shopping:list', {});
    expect(list.leftOut.length).toBeGreaterThan(0);
    expect(list.own).toHaveLength(1);
  });

  test('undoes and redoes its whole history', () => {
    const workshop = openWorkshop(sampleWorkshop());
    const through = (channel: 'change:undo' | 'change:redo', which: 'undo' | 'redo'): number => {
      let count = 0;
      while (workshop.get('change:state', {})[which] !== null) {
        workshop.get(channel, {});
        count += 1;
      }
      return count;
    };
    const undone = through('change:undo', 'undo');
    expect(undone).toBeGreaterThan(300);
    expect(through('change:redo', 'redo')).toBe(undone);
  });
});

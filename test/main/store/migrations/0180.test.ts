import fs from 'node:fs';
import path from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const SAMPLE = path.resolve(import.meta.dirname, '../../../fixtures/workshop-of-step-170.sqlite.br');
/** Tables that are worked out from the others, or are the search engine's own. */
const WORKED_OUT = /^(sqlite_|fabric_words|fabric_vocabulary|shelf$|search_state$)/;

/** The demo workshop with 700 random changes on top, as the program wrote it at step 170. */
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

describe('a workshop of step 170', () => {
  test('opens with every row it had', () => {
    const file = sampleWorkshop();
    const before = rowCounts(file);
    openWorkshop(file);
    const after = rowCounts(file);
    expect([...before.values()].reduce((sum, count) => sum + count, 0)).toBeGreaterThan(3_000);
    for (const [table, count] of before) expect([table, after.get(table)]).toEqual([table, count]);
  });

  test('has the new names in kept answers, plans, choices and history, and no old one', () => {
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
      // Keys and codes only: a label such as "Cloth to buy" is part of an answer as it was given.
      expect(
        texts.filter((one) => /"[a-z]*[cC]loth[A-Za-z]*\\?":|"[a-z-]*-cloth\\?"|"cloth-/.test(one)),
      ).toEqual([]);
    }
  });

  test('shows its kept answers, its cutting plan and its choices', () => {
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

  test('undoes and redoes the whole history it kept', () => {
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

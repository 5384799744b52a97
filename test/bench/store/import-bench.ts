import fs from 'node:fs';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import Database from 'better-sqlite3';
import { startStore } from '#main/store/thread/store-client';

const ROWS = 20_000;
const ROWS_A_SECOND = 50_000;

/**
 * Brings a table of 20,000 pieces in, from the file to the disk, and prints beside it how fast better-sqlite3 alone inserts
 * as many rows into bare tables of the same columns.
 */
export async function measureImport(folder: string): Promise<void> {
  const table = path.join(folder, 'table.csv');
  fs.writeFileSync(table, tableText());
  const started = await startStore({
    file: path.join(folder, 'import.sqlite'),
    programVersion: '0',
    isDemo: false,
  });
  if (!started.ok) throw new Error(JSON.stringify(started.error));
  const offered = await started.value.offerTable(table);
  if (!offered.ok) throw new Error(JSON.stringify(offered.error));
  const source = { kind: 'file', token: offered.value.token } as const;
  const asked = {
    table: {
      source,
      encoding: 'utf-8',
      hasTitles: null,
      mapping: null,
      mends: [],
      sameNames: 'apart',
      repeats: 'leave-out',
    },
  } as const;
  const dryMs = await timed(() => started.value.call('table:preview', asked));
  let added = 0;
  const importMs = await timed(async () => {
    const answer = await started.value.call('table:import', asked);
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    added = answer.value.pieces;
  });
  await started.value.close();
  const raw = rawRate(path.join(folder, 'raw.sqlite'));
  const rate = Math.round((added * 1_000) / importMs);
  const figures = {
    ...{ rows: added, dryRunMs: Math.round(dryMs), importMs: Math.round(importMs), rowsPerSecond: rate },
    ...{ rawRowsPerSecond: raw, limitRowsPerSecond: ROWS_A_SECOND },
    isWithin: rate >= Math.min(ROWS_A_SECOND, raw / 4),
  };
  console.log(JSON.stringify({ name: 'import of a table', ...figures }));
}

function tableText(): string {
  const lines = Array.from({ length: ROWS }, (_line, index) =>
    [
      `Fabric ${String(index)}`,
      'blue, grey',
      'cotton',
      '42 in',
      `Shelf ${String(index % 9)}`,
      '1 1/4 yd',
      '12.50',
      '2027-02-28',
    ]
      .map((cell) => (cell.includes(',') ? `"${cell}"` : cell))
      .join(','),
  );
  return `Name,Color,Fiber,Usable width,Place,Size,Paid,Bought on\n${lines.join('\n')}\n`;
}

/** The five rows a piece takes, in tables without keys, checks or triggers. */
function rawRate(file: string): number {
  const database = new Database(file);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  const columns = { fabric: 14, fabric_piece: 5, booking: 9, ledger_entry: 9, piece_sum: 4 };
  const inserts = Object.entries(columns).map(([table, count]) => {
    const names = Array.from({ length: count }, (_name, index) => `c${String(index)}`);
    database.exec(`CREATE TABLE ${table} (${names.join(', ')})`);
    const values = names.map((_name, index) => (index % 3 === 0 ? index * 1_000 : 'a few words of text'));
    const statement = database.prepare(`INSERT INTO ${table} VALUES (${names.map(() => '?').join(', ')})`);
    return () => statement.run(...values);
  });
  const began = performance.now();
  database.exec('BEGIN');
  for (let row = 0; row < ROWS; row += 1) for (const insert of inserts) insert();
  database.exec('COMMIT');
  const took = performance.now() - began;
  database.close();
  return Math.round((ROWS * 1_000) / took);
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

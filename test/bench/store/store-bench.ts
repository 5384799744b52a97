import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import Database from 'better-sqlite3';
import type { ChannelInput, StoreChannelName } from '#core/contract/channels';
import { stashGroupingSchema } from '#core/domain/stash-filter';
import { calendarDate } from '#core/units/calendar-date';
import { startStore, type StoreClient } from '#main/store/thread/store-client';
import { measureImport } from './import-bench';
import { buildLargeWorkshop, seeded, SIZE } from './large-workshop';
import { inches } from './sample-details';

const ROUNDS = 60;
/** So many calls go before, until the engine has compiled what they run; what the first of them took is printed beside. */
const WARM_UP = 20;
const SCREEN_MS = 10;
const BOOKING_MS = 5;
const TYPED = [
  'b',
  'bl',
  'blu',
  'blue',
  'blue d',
  'blue do',
  'blue dots',
  'c',
  'sh',
  'blue dots 77',
  'zzz',
  's',
  'st r',
];

interface Ids {
  readonly projects: readonly string[];
  readonly archived: readonly string[];
  readonly fabrics: readonly string[];
  readonly pieces: readonly string[];
  readonly stages: readonly string[];
}

/**
 * Measures every screen's calls on a workshop far beyond any maker's, through the store's thread as the window asks
 * them. One JSON line a figure: median, 95th percentile and the first call in milliseconds, and whether they are within the bar.
 */
export async function runStoreBench(_args: readonly string[]): Promise<void> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'ringbound-bench-'));
  try {
    await measureImport(folder);
    await measure(path.join(folder, 'workshop.sqlite'));
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(file: string): Promise<void> {
  const buildMs = await timed(() => buildLargeWorkshop(file));
  print('size', { ...SIZE, fileMb: round(fs.statSync(file).size / 2 ** 20), buildS: round(buildMs / 1000) });
  const ids = readIds(file);
  let client: StoreClient | undefined;
  const openMs = await timed(async () => {
    const started = await startStore({ file, programVersion: '0', isDemo: false });
    if (!started.ok) throw new Error(JSON.stringify(started.error));
    client = started.value;
  });
  if (client === undefined) return;
  print('start: check, back up, open', { ms: round(openMs) });
  await measureScreens(client, ids);
  await measureWholeWorkshop(client);
  await measureSearch(client);
  await measureBooking(client, ids);
  print('memory', { rssMb: round(process.memoryUsage().rss / 2 ** 20) });
  print('close', { ms: round(await timed(() => client?.close())) });
}

async function measureScreens(client: StoreClient, ids: Ids): Promise<void> {
  const chance = seeded(7);
  const one = (from: readonly string[]): never => from[chance(from.length)] as never;
  await series(client, 'bench: open projects', 'project:list', () => ({ archived: false }));
  await series(client, 'archive: first page', 'project:list', () => ({ archived: true, limit: 50 }));
  await series(client, 'archive: a later page', 'project:list', () => ({
    archived: true,
    offset: 1_500,
    limit: 50,
  }));
  await series(client, 'project page', 'project:open', () => ({ projectId: one(ids.archived) }));
  await series(client, 'project page: its fabric', 'ledger:of-project', () => ({
    projectId: one(ids.archived),
  }));
  await series(client, 'stage page: answers', 'calculation:list', () => ({ stageId: one(ids.stages) }));
  await series(client, 'stash: first page', 'fabric:list', () => ({ search: '', limit: 100 }));
  await series(client, 'stash: a later page', 'fabric:list', () => ({
    search: '',
    offset: 15_000,
    limit: 100,
  }));
  await series(client, 'fabric page', 'fabric:open', () => ({ fabricId: one(ids.fabrics) }));
  await series(client, 'opening', 'workshop:opening', () => ({}));
  await series(client, 'undo state', 'change:state', () => ({}));
}

/** What is asked of the whole workshop at once; the first look at insight adds the ledger up, and is printed by itself. */
async function measureWholeWorkshop(client: StoreClient): Promise<void> {
  const on = calendarDate('2027-02-28');
  await series(client, 'days: all open pieces planned', 'dates:plan', () => ({
    on,
    moves: { dues: [], promises: [] },
  }));
  await series(client, 'shopping list', 'shopping:list', () => ({}));
  print('insight: the first look', { ms: round(await timed(() => client.call('stash:numbers', {}))) });
  await series(client, 'insight', 'stash:numbers', () => ({}));
  for (const by of stashGroupingSchema.options) {
    await series(client, `groups by ${by}`, 'fabric:groups', () => ({ by, search: '' }));
  }
  const price = { length: inches(36), atLeast: 100, atMost: 2_000 };
  for (const counted of ['again', 'paid'] as const) {
    const filter = { price: { counted, ...price } };
    await series(client, `filter: price, ${counted}`, 'fabric:list', () => ({
      search: '',
      filter,
      limit: 100,
    }));
  }
  const filter = { boughtFrom: calendarDate('2020-01-01') };
  await series(client, 'filter: day bought', 'fabric:list', () => ({ search: '', filter, limit: 100 }));
}

async function measureSearch(client: StoreClient): Promise<void> {
  for (const search of TYPED) {
    await series(client, `search “${search}”`, 'fabric:list', () => ({ search, limit: 100 }));
  }
}

async function measureBooking(client: StoreClient, ids: Ids): Promise<void> {
  const chance = seeded(9);
  const on = calendarDate('2027-02-28');
  const cut = (leftovers: ChannelInput<'ledger:cut'>['leftovers']) => (): ChannelInput<'ledger:cut'> => ({
    pieceId: ids.pieces[chance(ids.pieces.length)] as never,
    projectId: ids.projects[chance(ids.projects.length)] as never,
    ...{ stageId: null, length: inches(2), leftovers, knowingly: true, on, note: '' },
  });
  await series(client, 'booking: a cut', 'ledger:cut', cut([]), BOOKING_MS);
  const leftovers = [{ width: inches(10), length: inches(2) }];
  await series(client, 'booking: a cut with a leftover', 'ledger:cut', cut(leftovers), BOOKING_MS);
  await series(client, 'undo a booking', 'change:undo', () => ({}), BOOKING_MS);
}

async function series<Name extends StoreChannelName>(
  client: StoreClient,
  name: string,
  channel: Name,
  input: () => ChannelInput<Name>,
  limitMs = SCREEN_MS,
): Promise<void> {
  const times: number[] = [];
  let firstMs = 0;
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const asked = input();
    const began = performance.now();
    const answer = await client.call(channel, asked);
    const took = performance.now() - began;
    if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer.error)}`);
    if (round === 0) firstMs = took;
    if (round >= WARM_UP) times.push(took);
  }
  times.sort((first, second) => first - second);
  const at = (share: number): number =>
    times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0;
  const figures = { p50Ms: round(at(0.5)), p95Ms: round(at(0.95)), firstMs: round(firstMs) };
  print(name, { ...figures, limitMs, isWithin: at(0.95) <= limitMs });
}

function readIds(file: string): Ids {
  const database = new Database(file, { readonly: true });
  const list = (sql: string): readonly string[] => database.prepare<[], string>(sql).pluck().all();
  const ids = {
    projects: list('SELECT id FROM project WHERE is_archived = 0'),
    archived: list('SELECT id FROM project WHERE is_archived = 1'),
    fabrics: list('SELECT id FROM fabric'),
    pieces: list(
      'SELECT id FROM fabric_piece JOIN piece_sum ON piece_seq = seq WHERE there > 1000000 LIMIT 5000',
    ),
    stages: list('SELECT id FROM stage LIMIT 1000'),
  };
  database.close();
  return ids;
}

async function timed(work: () => unknown): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

function print(name: string, figures: Readonly<Record<string, unknown>>): void {
  console.log(JSON.stringify({ name, ...figures }));
}

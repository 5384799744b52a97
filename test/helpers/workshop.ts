import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { onTestFinished } from 'vitest';
import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { FabricDetails } from '#core/domain/stash';
import type { ProjectDetails } from '#core/domain/project';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import type { Result } from '#core/result';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import { answerCall } from '#main/store/thread/answer-call';
import type { StoreContext } from '#main/store/thread/store-context';
import { migrate } from '#main/store/opening/migrate';
import { migrations } from '#main/store/migrations/migrations';
import { openContext } from '#main/store/thread/open-context';
import { closeStore } from '#main/store/opening/open-store';
import type { ClockAndIds } from '#main/store/base/clock-and-ids';
import { APPLICATION_ID } from '#main/store/opening/workshop-file';

export const inches = lengthFromInches;
export const TODAY = calendarDate('2027-02-28');
export const NO_SUCH_ID = '11111111-1111-4111-8111-111111111111';

/** A new folder on the disk, deleted after the test. */
export function temporaryFolder(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'ringbound-test-'));
  onTestFinished(() => fs.rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A clock that advances by a second at each call, and identifiers in order. */
export function countingClockAndIds(): ClockAndIds {
  let [ticks, ids] = [0, 0];
  return {
    now: () => Date.UTC(2027, 1, 28, 9) + 1000 * (ticks += 1),
    today: () => TODAY,
    newId: () => `00000000-0000-4000-8000-${(ids += 1).toString(16).padStart(12, '0')}`,
  };
}

export interface TestWorkshop {
  readonly context: StoreContext;
  readonly file: string;
  readonly ask: <Name extends StoreChannelName>(
    name: Name,
    input: ChannelInput<Name>,
  ) => Result<ChannelOutput<Name>, Problem>;
  /** The answer, which must be a success. */
  readonly get: <Name extends StoreChannelName>(name: Name, input: ChannelInput<Name>) => ChannelOutput<Name>;
  /** The problem; the call must fail. */
  readonly fail: <Name extends StoreChannelName>(name: Name, input: ChannelInput<Name>) => Problem;
}

/** The file of a new workshop. Made once, because that takes longer than most tests. */
let blankFile: Uint8Array | undefined;

function makeBlankFile(): Uint8Array {
  const file = pathOfNewWorkshop();
  const opened = openContext({ file, programVersion: '0.0.0', isDemo: false }, countingClockAndIds());
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  closeStore(opened.value.store);
  return fs.readFileSync(file);
}

/** Writes the file of a new workshop and returns its path. */
function blankWorkshop(): string {
  blankFile ??= makeBlankFile();
  const file = pathOfNewWorkshop();
  fs.writeFileSync(file, blankFile);
  return file;
}

/** A path without a file, for tests of opening for the first time. */
export function pathOfNewWorkshop(): string {
  return path.join(temporaryFolder(), 'workshop.sqlite');
}

/** Opens a workshop on a real file; a blank one unless given. */
export function openWorkshop(file = blankWorkshop()): TestWorkshop {
  const opened = openContext({ file, programVersion: '0.0.0', isDemo: false }, countingClockAndIds());
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  const context = opened.value;
  onTestFinished(() => closeStore(context.store));
  const ask: TestWorkshop['ask'] = (name, input) =>
    answerCall(context, name, input) as Result<ChannelOutput<typeof name>, Problem>;
  return {
    context,
    file,
    ask,
    get: (name, input) => {
      const answer = ask(name, input);
      if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer.error)}`);
      return answer.value;
    },
    fail: (name, input) => {
      const answer = ask(name, input);
      if (answer.ok) throw new Error(`${name} should have failed`);
      return answer.error;
    },
  };
}

/** A file at an older version of the format, for the test of the next step. */
export function createStoreAt(version: number, file: string): Database.Database {
  const database = new Database(file);
  database.pragma('journal_mode = WAL');
  database.pragma(`application_id = ${APPLICATION_ID}`);
  migrate(
    database,
    migrations.filter((one) => one.version <= version),
  );
  return database;
}

export function projectDetails(changes: Partial<ProjectDetails> = {}): ProjectDetails {
  return {
    name: 'Autumn ring',
    purpose: 'gift',
    forWhom: 'A neighbor',
    dueOn: calendarDate('2027-10-01'),
    outline: { shape: 'circle', diameter: inches(50) },
    hole: { diameter: inches(6) },
    hasSlit: true,
    settingChanges: {},
    notes: '',
    ...changes,
  };
}

export function fabricDetails(changes: Partial<FabricDetails> = {}): FabricDetails {
  return {
    name: 'Rust leaves',
    print: 'Falling leaves',
    colorWords: 'rust, warm brown',
    fiber: 'cotton',
    direction: 'any',
    width: inches(42),
    isWashed: true,
    supplier: 'An invented shop',
    place: 'Shelf 2',
    swatch: '#a0522d',
    notes: '',
    ...changes,
  };
}

/** The built-in stage plan with this name. */
export function planNamed(name: string): (typeof STARTING_PLANS)[number] {
  const plan = STARTING_PLANS.find((one) => one.name === name);
  if (plan === undefined) throw new Error(`No plan ${name}`);
  return plan;
}

/** A project with a stage of every kind that a closed ring sent out for quilting has. */
export function addProject(workshop: TestWorkshop, changes: Partial<ProjectDetails> = {}) {
  const stagePlanId = planNamed('Tree skirt, closed ring').id;
  const { projectId } = workshop.get('project:create', { details: projectDetails(changes), stagePlanId });
  return { projectId, ...workshop.get('project:open', { projectId }) };
}

/** A fabric 42 in wide and one piece of it: two yards for 20.00 unless given. */
export function addStock(workshop: TestWorkshop, bought: { yards?: number; costMinor?: number | null } = {}) {
  const { yards = 2, costMinor = 2000 } = bought;
  const { fabricId } = workshop.get('fabric:create', { details: fabricDetails() });
  const size = { width: inches(42), length: inches(36 * yards) };
  const { pieceId } = workshop.get('ledger:buy', {
    fabricId,
    kind: 'yardage',
    size,
    costMinor,
    on: TODAY,
    note: '',
  });
  return { fabricId, pieceId };
}

/** A tiny complete picture: one gray pixel. */
export const TINY_PNG = Uint8Array.from(
  Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
    'base64',
  ),
);

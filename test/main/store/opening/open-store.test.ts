import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { listBackups } from '#main/files/backups';
import { schemaSnapshot } from '#main/store/opening/schema-snapshot';
import { NEWEST_VERSION } from '#main/store/migrations/migrations';
import { closeStore, openStore } from '#main/store/opening/open-store';
import { APPLICATION_ID } from '#main/store/opening/workshop-file';
import {
  addProject,
  countingClockAndIds,
  openWorkshop,
  pathOfNewWorkshop,
  temporaryFolder,
} from '#test/helpers/workshop';

const clockAndIds = countingClockAndIds();

function workshopWithOneProject(): string {
  const workshop = openWorkshop(pathOfNewWorkshop());
  addProject(workshop);
  closeStore(workshop.context.store);
  return workshop.file;
}

function everythingIn(folder: string): Record<string, string> {
  const names = fs.readdirSync(folder).sort();
  return Object.fromEntries(
    names.map((name) => [name, fs.readFileSync(path.join(folder, name)).toString('hex')]),
  );
}

describe('a file that must not be opened', () => {
  test('from a newer program is refused and keeps its bytes, with nothing beside it', () => {
    const file = path.join(temporaryFolder(), 'workshop.sqlite');
    const newer = new Database(file);
    newer.exec(
      `PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = 990; CREATE TABLE later (x)`,
    );
    newer.close();
    const before = everythingIn(path.dirname(file));
    expect(openStore(file, { clockAndIds })).toEqual({
      ok: false,
      error: { code: 'newer-workshop', found: 990, newestSupported: NEWEST_VERSION },
    });
    expect(everythingIn(path.dirname(file))).toEqual(before);
  });

  test('from a newer program that crashed is refused even when only its log has the new version', () => {
    const folder = temporaryFolder();
    const file = path.join(folder, 'workshop.sqlite');
    fs.copyFileSync(workshopWithOneProject(), file);
    const newer = new Database(file);
    newer.pragma('journal_mode = WAL');
    newer.pragma('wal_autocheckpoint = 0');
    newer.pragma('user_version = 990');
    const crashed = temporaryFolder();
    for (const name of ['workshop.sqlite', 'workshop.sqlite-wal']) {
      fs.copyFileSync(path.join(folder, name), path.join(crashed, name));
    }
    newer.close();
    const before = everythingIn(crashed);
    const opened = openStore(path.join(crashed, 'workshop.sqlite'), { clockAndIds });
    expect(opened).toMatchObject({ ok: false, error: { code: 'newer-workshop', found: 990 } });
    expect(everythingIn(crashed)).toEqual(before);
  });

  test.each([
    ['of another program', (file: string) => new Database(file).exec('CREATE TABLE theirs (x)').close()],
    ['that is no database', (file: string) => fs.writeFileSync(file, 'A shopping list\n'.repeat(100))],
  ])('%s is refused and stays as it is', (_what, make) => {
    const file = path.join(temporaryFolder(), 'workshop.sqlite');
    make(file);
    const before = everythingIn(path.dirname(file));
    expect(openStore(file, { clockAndIds })).toMatchObject({
      ok: false,
      error: { code: 'file-unreadable' },
    });
    expect(everythingIn(path.dirname(file))).toEqual(before);
  });

  test('that is damaged is refused with SQLite’s message and keeps its bytes', () => {
    const file = workshopWithOneProject();
    const bytes = fs.readFileSync(file);
    bytes.fill(0xa5, 4096 * 3, 4096 * 8);
    fs.writeFileSync(file, bytes);
    expect(openStore(file, { clockAndIds })).toMatchObject({
      ok: false,
      error: { code: 'file-unreadable' },
    });
    expect(fs.readFileSync(file).equals(bytes)).toBe(true);
  });

  test('in a folder that cannot be created gives a problem, not an exception', () => {
    const inTheWay = path.join(temporaryFolder(), 'file');
    fs.writeFileSync(inTheWay, '');
    const opened = openStore(path.join(inTheWay, 'workshop.sqlite'), { clockAndIds });
    expect(opened).toMatchObject({ ok: false, error: { code: 'file-unreadable' } });
  });
});

describe('opening', () => {
  test('sets the file up so that a confirmed change survives a power cut', () => {
    const { database } = openWorkshop().context.store;
    const read = (name: string): unknown => database.pragma(name, { simple: true });
    expect(read('journal_mode')).toBe('wal');
    expect(read('synchronous')).toBe(2);
    expect(read('foreign_keys')).toBe(1);
    expect(read('application_id')).toBe(APPLICATION_ID);
  });

  test('backs up at every start except the first, when there is nothing yet', () => {
    const file = workshopWithOneProject();
    const folder = path.join(path.dirname(file), 'backups');
    expect(listBackups(folder)).toEqual([]);
    openWorkshop(file);
    expect(listBackups(folder).map(({ why }) => why)).toEqual(['start']);
  });

  test('leaves one file with the log folded in when it is closed', () => {
    const file = workshopWithOneProject();
    expect(fs.readdirSync(path.dirname(file))).toEqual(['workshop.sqlite']);
  });

  test('applies a migration as a whole: killed in the middle, the file keeps its version', async () => {
    const file = workshopWithOneProject();
    const folder = path.dirname(file);
    const child = spawn(process.execPath, [
      '--import',
      'tsx',
      path.resolve('test/helpers/die-in-migration.ts'),
      file,
    ]);
    const code = await new Promise((resolve) => child.on('exit', (_code, signal) => resolve(signal)));
    expect(code).toBe('SIGKILL');
    const { context, get } = openWorkshop(file);
    expect(schemaSnapshot(context.store.database).version).toBe(NEWEST_VERSION);
    expect(
      context.store.database.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'half_done'").get(),
    ).toBeUndefined();
    expect(get('project:list', { archived: false }).total).toBe(1);
    expect(listBackups(path.join(folder, 'backups')).map(({ why }) => why)).toEqual(['start', 'migration']);
  });
});

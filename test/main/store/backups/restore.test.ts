import fs from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { backupName } from '#main/files/backup-names';
import { APPLICATION_ID } from '#main/store/opening/workshop-file';
import { dumpOf } from '#test/helpers/dump';
import { addStock, addProject, openWorkshop, pathOfNewWorkshop } from '#test/helpers/workshop';

function workshopWithBackup() {
  const workshop = openWorkshop(pathOfNewWorkshop());
  addProject(workshop);
  addStock(workshop);
  return { workshop, backup: workshop.get('backup:make', {}), then: dumpOf(workshop) };
}

describe('a backup made by hand', () => {
  test('is listed with its size and is a complete workshop', () => {
    const { workshop, backup } = workshopWithBackup();
    expect(workshop.get('backup:list', {})).toEqual([backup]);
    expect(backup).toMatchObject({ why: 'by-hand' });
    const copy = openWorkshop(path.join(workshop.context.folders.backups, backup.name));
    expect(dumpOf(copy)).toBe(dumpOf(workshop));
  });

  test('includes the latest change, even while that is only in the log', () => {
    const { workshop } = workshopWithBackup();
    addProject(workshop, { name: 'At the last moment' });
    const { name } = workshop.get('backup:make', {});
    const copy = openWorkshop(path.join(workshop.context.folders.backups, name));
    expect(copy.get('project:list', { archived: false }).total).toBe(2);
  });
});

describe('restoring', () => {
  test('brings the workshop back with its history, and backs up the current one', () => {
    const { workshop, backup, then } = workshopWithBackup();
    addProject(workshop, { name: 'Since then' });
    const since = dumpOf(workshop);
    expect(workshop.get('backup:restore', { name: backup.name })).toEqual({ restored: backup.name });
    expect(dumpOf(workshop)).toBe(then);
    expect(workshop.get('change:state', {}).undo).toBe('Bought “Rust leaves”');
    const safety = workshop.get('backup:list', {}).find(({ why }) => why === 'restore')!;
    workshop.get('backup:restore', { name: safety.name });
    expect(dumpOf(workshop)).toBe(since);
    addProject(workshop, { name: 'And on' });
  });

  test('makes another file of the workshop, except going back to where it was before a restore', () => {
    const { workshop, backup } = workshopWithBackup();
    const fileId = () => workshop.get('workshop:opening', {}).fileId;
    const first = fileId();
    workshop.get('backup:restore', { name: backup.name });
    const second = fileId();
    expect(second).not.toBe(first);
    const safety = workshop.get('backup:list', {}).find(({ why }) => why === 'restore')!;
    workshop.get('backup:restore', { name: safety.name });
    expect(fileId()).toBe(first);
    workshop.get('backup:restore', { name: backup.name });
    expect([first, second]).not.toContain(fileId());
  });

  test('leaves no unfinished file behind', () => {
    const { workshop, backup } = workshopWithBackup();
    workshop.get('backup:restore', { name: backup.name });
    const names = fs.readdirSync(path.dirname(workshop.file)).filter((name) => !/-(wal|shm)$/.test(name));
    expect(names.sort()).toEqual(['backups', 'workshop.sqlite']);
  });

  const inBackups = (workshop: ReturnType<typeof openWorkshop>, name: string) =>
    path.join(workshop.context.folders.backups, name);
  test.each<[string, string, (file: string, good: string) => void]>([
    [
      'damaged',
      'backup-unusable',
      (file, good) => {
        const bytes = fs.readFileSync(good);
        bytes.fill(0x5a, 4096 * 2, 4096 * 9);
        fs.writeFileSync(file, bytes);
      },
    ],
    [
      'cut short',
      'backup-unusable',
      (file, good) => fs.writeFileSync(file, fs.readFileSync(good).subarray(0, 9000)),
    ],
    ['empty', 'backup-unusable', (file) => fs.writeFileSync(file, '')],
    ['no database', 'backup-unusable', (file) => fs.writeFileSync(file, 'x'.repeat(5000))],
    ['another program’s', 'backup-unusable', (file) => new Database(file).exec('CREATE TABLE t (x)').close()],
    [
      'a newer program’s',
      'newer-workshop',
      (file) =>
        new Database(file)
          .exec(`PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = 770; CREATE TABLE t (x)`)
          .close(),
    ],
  ])('a backup that is %s is refused and nothing is lost', (_what, code, spoil) => {
    const { workshop, backup, then } = workshopWithBackup();
    const name = backupName(Date.UTC(2026, 0, 1), 'start');
    spoil(inBackups(workshop, name), inBackups(workshop, backup.name));
    const before = fs.readdirSync(workshop.context.folders.backups);
    expect(workshop.fail('backup:restore', { name })).toMatchObject({ code });
    expect(dumpOf(workshop)).toBe(then);
    expect(fs.readdirSync(workshop.context.folders.backups)).toEqual(before);
    addProject(workshop, { name: 'Still writable' });
  });

  test.each([
    '../workshop.sqlite',
    '/etc/passwd',
    'workshop.sqlite',
    '',
    '2026-01-01T00-00-00-000Z_start.sqlite',
  ])('from %j, which is no backup there is, is not found', (name) => {
    const { workshop } = workshopWithBackup();
    expect(workshop.fail('backup:restore', { name })).toEqual({ code: 'not-found', kind: 'backup' });
  });
});

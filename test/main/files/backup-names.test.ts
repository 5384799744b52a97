import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { backupName, backupsToDelete, readBackupName } from '#main/files/backup-names';

const NOW = Date.UTC(2027, 5, 15, 12);
const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const at = (ago: number): string => backupName(NOW - ago, 'start');

describe('the name of a backup', () => {
  test('gives the time in UTC and the reason, and reads back', () => {
    const name = backupName(Date.UTC(2027, 1, 28, 9, 30, 0, 5), 'by-hand');
    expect(name).toBe('2027-02-28T09-30-00-005Z_by-hand.sqlite');
    expect(readBackupName(name)).toEqual({
      name,
      madeAt: Date.UTC(2027, 1, 28, 9, 30, 0, 5),
      why: 'by-hand',
    });
  });

  test.each([
    '',
    'notes.txt',
    '../2027-02-28T09-30-00-005Z_start.sqlite',
    '2027-13-41T09-30-00-005Z_start.sqlite',
    '2027-02-28T09-30-00-005Z_other.sqlite',
    '.2027-02-28T09-30-00-005Z_start.sqlite.part',
  ])('%j is none', (name) => expect(readBackupName(name)).toBeNull());
});

describe('backups to delete', () => {
  test('are none while there are ten or fewer, whatever their age', () => {
    expect(
      backupsToDelete(
        Array.from({ length: 10 }, (_one, index) => at(index * 100 * DAY)),
        NOW,
      ),
    ).toEqual([]);
  });

  test('are all except the last ten and the latest of each of thirty days', () => {
    const lastTen = Array.from({ length: 10 }, (_one, index) => at(index * 60_000));
    const sameDay = at(11 * HOUR);
    const dayBefore = [at(DAY), at(DAY + HOUR), at(DAY + 2 * HOUR)];
    const lastOfThirty = at(29 * DAY);
    const tooOld = at(30 * DAY + HOUR);
    const drop = backupsToDelete([tooOld, lastOfThirty, ...dayBefore, sameDay, ...lastTen], NOW);
    expect([...drop].sort()).toEqual([sameDay, dayBefore[1], dayBefore[2], tooOld].sort());
  });

  test('never include a file that is not a backup', () => {
    const many = Array.from({ length: 40 }, (_one, index) => at(index * DAY * 2));
    expect(backupsToDelete([...many, 'holiday.jpg', 'workshop.sqlite'], NOW)).not.toContain('holiday.jpg');
  });

  test('always leave the last ten, do not depend on order, and are none the second time', () => {
    const times = fc.uniqueArray(fc.integer({ min: 0, max: 90 * DAY }), { maxLength: 60 });
    fc.assert(
      fc.property(times, (ago) => {
        const names = ago.map(at);
        const drop = new Set(backupsToDelete(names, NOW));
        const left = names.filter((name) => !drop.has(name));
        const lastTen = [...names].sort().reverse().slice(0, 10);
        expect(left).toEqual(expect.arrayContaining(lastTen));
        expect(backupsToDelete(left, NOW)).toEqual([]);
        expect(new Set(backupsToDelete([...names].reverse(), NOW))).toEqual(drop);
      }),
    );
  });
});

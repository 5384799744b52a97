import path from 'node:path';
import { expect, test } from 'vitest';
import { STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { calendarDate } from '#core/units/calendar-date';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

/** A workshop of the version before, with one change that can still be undone. */
function olderWorkshop(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(10, file);
  older.exec(`
    INSERT INTO change_log (id, words, made_at, is_undone) VALUES ('00000000-0000-4000-8000-0000000000aa', 'Changed the workshop', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO workshop (id, name, currency, theme, habits_json) VALUES ('workshop', 'Old attic', 'EUR', 'dark', '{"turnaroundDays":21}');
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  return file;
}

test('an older workshop gets the starting hours and keeps the rest', () => {
  const { workshop } = openWorkshop(olderWorkshop()).get('workshop:opening', {});
  expect(workshop).toMatchObject({ name: 'Old attic', currency: 'EUR', benchTime: STARTING_BENCH_TIME });
  expect(workshop.settings.turnaroundDays).toBe(21);
});

test('hours and days off are saved as their own change and undone', () => {
  const opened = openWorkshop(olderWorkshop());
  const { workshop } = opened.get('workshop:opening', {});
  const benchTime = {
    weekMinutes: [0, 0, 30, 0, 0, 240, 0] as const,
    daysOff: [{ from: calendarDate('2027-12-24'), to: calendarDate('2027-12-26'), why: 'Feast' }],
    remindsOfDays: true,
  };
  opened.get('workshop:change', { workshop: { ...workshop, benchTime } });
  expect(opened.get('workshop:opening', {}).workshop.benchTime).toEqual(benchTime);
  expect(opened.get('change:state', {}).undo).toBe('Changed your bench hours');
  opened.get('change:undo', {});
  expect(opened.get('workshop:opening', {}).workshop).toEqual(workshop);
});

test('a change made before the migration can still be undone and redone', () => {
  const opened = openWorkshop(olderWorkshop());
  opened.get('change:undo', {});
  expect(opened.get('workshop:opening', {}).workshop.name).toBe('');
  opened.get('change:redo', {});
  expect(opened.get('workshop:opening', {}).workshop).toMatchObject({
    name: 'Old attic',
    benchTime: STARTING_BENCH_TIME,
  });
});

test('days off that end before they start, and days of more than 24 hours, are refused', () => {
  const opened = openWorkshop();
  const { workshop } = opened.get('workshop:opening', {});
  const change = (benchTime: object) =>
    opened.fail('workshop:change', {
      workshop: { ...workshop, benchTime: { ...workshop.benchTime, ...benchTime } },
    });
  const backwards = { from: calendarDate('2027-05-02'), to: calendarDate('2027-05-01'), why: '' };
  expect(change({ daysOff: [backwards] }).code).toBe('invalid-input');
  expect(change({ weekMinutes: [1441, 0, 0, 0, 0, 0, 0] }).code).toBe('invalid-input');
});

import { afterEach, describe, expect, it } from 'vitest';
import { STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { planDates } from '#core/planner/plan-dates';
import { calendarDate } from '#core/units/calendar-date';
import { dateWords, today } from '#renderer/text/dates';

const usual = process.env['TZ'];
afterEach(() => {
  if (usual === undefined) delete process.env['TZ'];
  else process.env['TZ'] = usual;
});

/** Instants at which the day of the week, month or year turns or a clock is put forward or back somewhere, and where it is what day. */
const DAYS: Readonly<Record<string, readonly (readonly [instant: string, day: string])[]>> = {
  'America/Los_Angeles': [
    ['2027-01-01T07:59:59Z', '2026-12-31'],
    ['2027-03-14T10:00:00Z', '2027-03-14'],
    ['2027-11-08T07:30:00Z', '2027-11-07'],
  ],
  'Europe/Berlin': [
    ['2026-12-31T23:00:00Z', '2027-01-01'],
    ['2027-03-28T01:00:00Z', '2027-03-28'],
    ['2027-10-31T22:59:59Z', '2027-10-31'],
  ],
  'Asia/Kolkata': [
    ['2027-02-28T18:29:59Z', '2027-02-28'],
    ['2028-02-28T18:30:00Z', '2028-02-29'],
  ],
  'Australia/Lord_Howe': [
    ['2027-04-03T14:59:59Z', '2027-04-04'],
    ['2027-10-02T15:30:00Z', '2027-10-03'],
  ],
  'Pacific/Kiritimati': [
    ['2026-12-31T09:59:59Z', '2026-12-31'],
    ['2026-12-31T10:00:00Z', '2027-01-01'],
  ],
};

describe.each(Object.entries(DAYS))('in the time zone %s', (zone, instants) => {
  it.each(instants)('at %s it is %s', (instant, day) => {
    process.env['TZ'] = zone;
    expect(today(new Date(instant))).toBe(day);
  });

  it('a schedule over both clock changes and New Year has the same days in every time zone', () => {
    process.env['TZ'] = zone;
    const on = today(new Date('2027-03-01T12:00:00Z'));
    const { projects, sessions } = planDates({
      today: on,
      hands: STARTING_BENCH_TIME,
      projects: [
        {
          id: 'round',
          dueOn: calendarDate('2028-01-31'),
          readyOn: null,
          steps: [
            { kind: 'wait', id: 'away', days: 300 },
            { kind: 'work', id: 'bind', minutes: 600 },
          ],
        },
      ],
    });
    expect(on).toBe(zone === 'Pacific/Kiritimati' ? '2027-03-02' : '2027-03-01');
    const shift = on === '2027-03-01' ? 0 : 1;
    expect(projects[0]!.finishOn).toBe(['2028-01-01', '2028-01-02'][shift]);
    expect(sessions[0]!.on).toBe(['2027-12-26', '2027-12-27'][shift]);
    expect(dateWords(calendarDate('2027-12-31'), 'en-GB', on)).toBe('31 Dec');
  });
});

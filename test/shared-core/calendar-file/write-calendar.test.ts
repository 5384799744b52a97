import ICAL from 'ical.js';
import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import { writeCalendar } from '#core/calendar-file/write-calendar';
import { calendarDate } from '#core/units/calendar-date';

// The file is read back by ical.js, an independent parser of RFC 5545.
const STAMP = '20270912T081500Z';
const day = (part: Partial<DayToRemember> = {}): DayToRemember => ({
  kind: 'due',
  ownerId: '00000000-0000-4000-8000-000000000001',
  on: calendarDate('2027-12-24'),
  projectName: 'Frost round',
  who: 'Aunt Wren',
  ...part,
});
const write = (...days: readonly DayToRemember[]) => writeCalendar({ name: 'Attic', stamp: STAMP, days });
const read = (text: string) => new ICAL.Component(ICAL.parse(text) as unknown[]);
const eventsOf = (text: string) =>
  read(text)
    .getAllSubcomponents('vevent')
    .map((one) => new ICAL.Event(one));

describe('a calendar file', () => {
  it('reads back in another program as whole days with their summary and description', () => {
    const text = write(
      day(),
      day({ kind: 'send-by', on: calendarDate('2027-11-20'), who: '' }),
      day({ kind: 'back', on: calendarDate('2027-12-18'), who: 'Tansy Quill' }),
    );
    expect(
      eventsOf(text).map((event) => [event.startDate.toString(), event.summary, event.description]),
    ).toEqual([
      ['2027-12-24', 'Frost round is due', 'For Aunt Wren'],
      ['2027-11-20', 'Last day to send out Frost round', 'If you send it later, a project will be late.'],
      ['2027-12-18', 'Frost round is promised back', 'From Tansy Quill'],
    ]);
    expect(eventsOf(text).every((event) => event.startDate.isDate)).toBe(true);
  });

  it('has the fields the standard requires, and an alarm on the morning before', () => {
    const calendar = read(write(day()));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//Ringbound//Workshop notebook//EN');
    const event = calendar.getFirstSubcomponent('vevent')!;
    expect(event.getFirstPropertyValue('dtstamp')!.toString()).toBe('2027-09-12T08:15:00Z');
    const alarm = event.getFirstSubcomponent('valarm')!;
    expect(alarm.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(alarm.getFirstPropertyValue('trigger')!.toString()).toBe('-PT15H');
    expect(alarm.getFirstPropertyValue('description')).toBe('Frost round is due');
  });

  it('gives a day the same UID in every file, and every day of a file its own', () => {
    const uids = (text: string) => eventsOf(text).map(({ uid }) => uid);
    const [first] = uids(write(day()));
    expect(uids(write(day({ on: calendarDate('2028-02-29'), projectName: 'Renamed' })))).toEqual([first]);
    const all = uids(
      write(day(), day({ kind: 'send-by' }), day({ kind: 'back' }), day({ ownerId: 'another' })),
    );
    expect(new Set(all).size).toBe(4);
  });

  it('keeps every name exactly, whatever characters it contains', () => {
    const name = fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 200 })
      .map((text) => text.replace(/\p{Cc}/gu, ''));
    fc.assert(
      fc.property(name, (projectName) => {
        expect(eventsOf(write(day({ projectName })))[0]!.summary).toBe(`${projectName} is due`);
      }),
    );
    const awkward = 'Rings; rounds, and \\backslashes\\n "quoted": ½ yd\nsecond line';
    expect(eventsOf(write(day({ projectName: awkward })))[0]!.summary).toBe(`${awkward} is due`);
  });

  it('has no line over 75 octets, ends every line with CRLF, and never breaks a character', () => {
    const text = write(day({ projectName: '🧵 Nähkästchen für den großen Ring – '.repeat(4) }));
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    const lines = text.slice(0, -2).split('\r\n');
    for (const line of lines) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/\p{Cs}/u);
    }
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
  });

  it('is a valid calendar without any days', () => {
    expect(eventsOf(write())).toEqual([]);
  });
});

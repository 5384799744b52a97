import ICAL from 'ical.js';
import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import { writeCalendar } from '#core/calendar-file/write-calendar';
import { calendarDate } from '#core/units/calendar-date';

// The reader is ical.js, a parser of RFC 5545 that is not ours.
const STAMP = '20270912T081500Z';
const day = (part: Partial<DayToRemember> = {}): DayToRemember => ({
  kind: 'due',
  of: '00000000-0000-4000-8000-000000000001',
  on: calendarDate('2027-12-24'),
  piece: 'Frost round',
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
  it('is read by another program as whole days with what they are for', () => {
    const text = write(
      day(),
      day({ kind: 'send-by', on: calendarDate('2027-11-20'), who: '' }),
      day({ kind: 'back', on: calendarDate('2027-12-18'), who: 'Tansy Quill' }),
    );
    expect(
      eventsOf(text).map((event) => [event.startDate.toString(), event.summary, event.description]),
    ).toEqual([
      ['2027-12-24', 'Frost round is due', 'For Aunt Wren'],
      [
        '2027-11-20',
        'Last day to send out Frost round',
        'If it leaves later, something will not be done in time.',
      ],
      ['2027-12-18', 'Frost round was promised back', 'From Tansy Quill'],
    ]);
    expect(eventsOf(text).every((event) => event.startDate.isDate)).toBe(true);
  });

  it('carries what the standard asks for, and an alarm on the morning before', () => {
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

  it('names a day alike in every file, and no two days of one file alike', () => {
    const uids = (text: string) => eventsOf(text).map(({ uid }) => uid);
    const [first] = uids(write(day()));
    expect(uids(write(day({ on: calendarDate('2028-02-29'), piece: 'Renamed' })))).toEqual([first]);
    const all = uids(write(day(), day({ kind: 'send-by' }), day({ kind: 'back' }), day({ of: 'another' })));
    expect(new Set(all).size).toBe(4);
  });

  it('gives back every name as it was, whatever signs it is written with', () => {
    const name = fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 200 })
      .map((text) => text.replace(/\p{Cc}/gu, ''));
    fc.assert(
      fc.property(name, (piece) => {
        expect(eventsOf(write(day({ piece })))[0]!.summary).toBe(`${piece} is due`);
      }),
    );
    const awkward = 'Rings; rounds, and \\backslashes\\n "quoted": ½ yd\nsecond line';
    expect(eventsOf(write(day({ piece: awkward })))[0]!.summary).toBe(`${awkward} is due`);
  });

  it('has no line over 75 octets, ends every line with CRLF, and never breaks a character', () => {
    const text = write(day({ piece: '🧵 Nähkästchen für den großen Ring – '.repeat(4) }));
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    const lines = text.slice(0, -2).split('\r\n');
    for (const line of lines) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/\p{Cs}/u);
    }
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
  });

  it('is a calendar all the same where there are no days', () => {
    expect(eventsOf(write())).toEqual([]);
  });
});

import type { CalendarDate } from '#core/units/calendar-date';
import { escapedText, foldedLine } from './calendar-text';
import type { DayKind, DayToRemember } from './day-to-remember';

export interface CalendarInput {
  readonly name: string;
  /** When the file is written, as RFC 5545 spells an instant in UTC: `20270912T081500Z`. */
  readonly stamp: string;
  readonly days: readonly DayToRemember[];
}

/** Nine in the morning of the day before. */
const ALARM = '-PT15H';

const SUMMARIES: Readonly<Record<DayKind, (piece: string) => string>> = {
  due: (piece) => `${piece} is due`,
  'send-by': (piece) => `Last day to send out ${piece}`,
  back: (piece) => `${piece} was promised back`,
};

const DESCRIPTIONS: Readonly<Record<DayKind, (who: string) => string>> = {
  due: (who) => (who === '' ? '' : `For ${who}`),
  'send-by': () => 'If it leaves later, something will not be done in time.',
  back: (who) => (who === '' ? '' : `From ${who}`),
};

/**
 * An iCalendar file (RFC 5545) of whole days, each with an alarm. An identifier stays the same from file to file, so that a
 * calendar that reads a later file moves what it has in place of adding to it.
 */
export function writeCalendar({ name, stamp, days }: CalendarInput): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Ringbound//Workshop notebook//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escapedText(name)}`,
    ...days.flatMap((day) => eventLines(day, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldedLine(line)}\r\n`).join('');
}

function eventLines({ kind, of, on, piece, who }: DayToRemember, stamp: string): readonly string[] {
  const summary = escapedText(SUMMARIES[kind](piece));
  const description = DESCRIPTIONS[kind](who);
  return [
    'BEGIN:VEVENT',
    `UID:${of}-${kind}@ringbound.invalid`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${digitsOf(on)}`,
    `SUMMARY:${summary}`,
    ...(description === '' ? [] : [`DESCRIPTION:${escapedText(description)}`]),
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${summary}`,
    `TRIGGER:${ALARM}`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

function digitsOf(date: CalendarDate): string {
  return date.replaceAll('-', '');
}

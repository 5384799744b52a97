import type { CalendarDate } from '#core/units/calendar-date';
import { escapedText, foldedLine } from './calendar-text';
import type { DayKind, DayToRemember } from './day-to-remember';

export interface CalendarInput {
  readonly name: string;
  /** When the file is written, as a UTC instant of RFC 5545: `20270912T081500Z`. */
  readonly stamp: string;
  readonly days: readonly DayToRemember[];
}

/** 9 a.m. on the day before. */
const ALARM = '-PT15H';

const SUMMARIES: Readonly<Record<DayKind, (projectName: string) => string>> = {
  due: (projectName) => `${projectName} is due`,
  'send-by': (projectName) => `Last day to send out ${projectName}`,
  back: (projectName) => `${projectName} is promised back`,
};

const DESCRIPTIONS: Readonly<Record<DayKind, (who: string) => string>> = {
  due: (who) => (who === '' ? '' : `For ${who}`),
  'send-by': () => 'If you send it later, a project will be late.',
  back: (who) => (who === '' ? '' : `From ${who}`),
};

/**
 * An iCalendar file (RFC 5545) of whole days, each with an alarm. Every day keeps its UID from file to file, so a calendar
 * that imports a newer file moves its events instead of adding them again.
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

function eventLines(
  { kind, ownerId, on, projectName, who }: DayToRemember,
  stamp: string,
): readonly string[] {
  const summary = escapedText(SUMMARIES[kind](projectName));
  const description = DESCRIPTIONS[kind](who);
  return [
    'BEGIN:VEVENT',
    `UID:${ownerId}-${kind}@ringbound.invalid`,
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

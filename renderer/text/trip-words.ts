import type { Trip } from '#core/contract/projects';
import { type AskAfter, lastWordOn, type TripEventKind } from '#core/domain/trip';
import type { DaysAway } from '#core/learned/days-away';
import type { Learned } from '#core/learned/learned';
import type { Turnaround } from '#core/learned/turnaround';
import { roundNearest } from '#core/units/rounding';
import type { CalendarDate } from '#core/units/calendar-date';
import { dateWords } from './dates';

/** What happened, as it stands in a list of days. */
export const TRIP_EVENT_WORDS: Readonly<Record<TripEventKind, string>> = {
  packed: 'Packed',
  arrived: 'Arrived there',
  'on-the-frame': 'On the frame',
  ready: 'Quilted and ready',
  'sent-back': 'On its way back',
  heard: 'Word from them',
};

/** `1 day`, `23 days`. */
export function dayCount(days: number): string {
  return days === 1 ? '1 day' : `${String(days)} days`;
}

/** `no trip`, `1 trip`, `4 trips`. */
export function tripCount(trips: number): string {
  if (trips === 0) return 'no trip';
  return trips === 1 ? '1 trip' : `${String(trips)} trips`;
}

/** Why a piece should be asked after: `5 days late` or `no word for 24 days`. */
export function askAfterWords({ why, days }: AskAfter): string {
  return why === 'overdue' ? `${dayCount(days)} late` : `no word for ${dayCount(days)}`;
}

/** `36 days as a rule, mostly 32 to 44, from 6 trips`. */
export function learnedDaysWords({ count, median, low, high }: Learned): string {
  const whole = (days: number) => String(roundNearest(days, 1));
  const from = `from ${tripCount(count)}`;
  if (count === 1) return `${dayCount(median)} ${from}`;
  const rule = `${dayCount(roundNearest(median, 1))} as a rule`;
  return whole(low) === whole(high)
    ? `${rule}, ${from}`
    : `${rule}, mostly ${whole(low)} to ${whole(high)}, ${from}`;
}

/** Where the days come from that are reckoned with. */
export function turnaroundWords({ days, from, learned }: Turnaround): string {
  const known = learned === null ? 'no trip has ended yet' : `so far ${learnedDaysWords(learned)}`;
  switch (from) {
    case 'learned':
      return learned === null ? '' : learnedDaysWords(learned);
    case 'promised':
      return `${dayCount(days)} promised; ${known}`;
    case 'usual':
      return `${dayCount(days)} as is usual here; ${known}`;
  }
}

/** How long a piece is away, and whose figure it is: `36 days, as 4 trips to Pell took`. */
export function daysAwayWords({ days, from, withWhom, learned }: DaysAway): string {
  const who = withWhom ?? '';
  switch (from) {
    case 'trip':
      return `${dayCount(days)}, as agreed with ${who}`;
    case 'learned':
      return `${dayCount(days)}, as ${tripCount(learned?.count ?? 0)} to ${who} took`;
    case 'promised':
      return `${dayCount(days)}, as ${who} promises`;
    case 'usual':
      return `${dayCount(days)}, as usual here${withWhom === null ? '; nobody is booked' : `, for ${who}`}`;
  }
}

/** The last thing that happened to a trip: `On the frame 12 Oct`; null when no day of it is known. */
export function lastWordWords(trip: Trip, locale: string, on: CalendarDate): string | null {
  const day = lastWordOn(trip);
  if (day === null) return null;
  const event = trip.events.findLast((one) => one.on === day);
  const what = event === undefined ? 'Sent' : TRIP_EVENT_WORDS[event.kind];
  return `${what} ${dateWords(day, locale, on)}`;
}

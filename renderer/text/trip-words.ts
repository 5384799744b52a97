import type { Trip } from '#core/contract/projects';
import { type CheckInReason, lastUpdateOn, type TripEventKind } from '#core/domain/trip';
import type { DaysAway } from '#core/learned/days-away';
import type { Learned } from '#core/learned/learned';
import type { Turnaround } from '#core/learned/turnaround';
import { roundNearest } from '#core/units/rounding';
import type { CalendarDate } from '#core/units/calendar-date';
import { dateWords } from './dates';

/** What happened on a trip, in a list by day. */
export const TRIP_EVENT_WORDS: Readonly<Record<TripEventKind, string>> = {
  packed: 'Packed',
  arrived: 'Arrived there',
  'on-the-frame': 'On the frame',
  ready: 'Quilted and ready',
  'sent-back': 'On its way back',
  heard: 'Other news',
};

/** `1 day`, `23 days`. */
export function dayCount(days: number): string {
  return days === 1 ? '1 day' : `${String(days)} days`;
}

/** `no trips`, `1 trip`, `4 trips`. */
export function tripCount(trips: number): string {
  if (trips === 0) return 'no trips';
  return trips === 1 ? '1 trip' : `${String(trips)} trips`;
}

/** Why to check in with the quilter: `5 days late` or `no news for 24 days`. */
export function checkInWords({ why, days }: CheckInReason): string {
  return why === 'overdue' ? `${dayCount(days)} late` : `no news for ${dayCount(days)}`;
}

/** `usually 36 days, mostly 32 to 44, from 6 trips`. */
function learnedDaysWords({ count, median, low, high }: Learned): string {
  const whole = (days: number) => String(roundNearest(days, 1));
  const from = `from ${tripCount(count)}`;
  if (count === 1) return `${dayCount(median)} ${from}`;
  const usually = `usually ${dayCount(roundNearest(median, 1))}`;
  return whole(low) === whole(high)
    ? `${usually}, ${from}`
    : `${usually}, mostly ${whole(low)} to ${whole(high)}, ${from}`;
}

/** How many days to plan with, and where that figure comes from. */
export function turnaroundWords({ days, from, learned }: Turnaround): string {
  const soFar = learned === null ? 'nothing back from them yet' : `so far ${learnedDaysWords(learned)}`;
  switch (from) {
    case 'learned':
      return learned === null ? '' : learnedDaysWords(learned);
    case 'promised':
      return `${dayCount(days)} promised; ${soFar}`;
    case 'usual':
      return `${dayCount(days)} (your usual); ${soFar}`;
  }
}

/** How long a project is away, and where that figure comes from: `36 days, based on 4 trips to Pell`. */
export function daysAwayWords({ days, from, withWhom, learned }: DaysAway): string {
  const who = withWhom ?? '';
  switch (from) {
    case 'trip':
      return `${dayCount(days)}, as agreed with ${who}`;
    case 'learned':
      return `${dayCount(days)}, based on ${tripCount(learned?.count ?? 0)} to ${who}`;
    case 'promised':
      return `${dayCount(days)}, as ${who} promises`;
    case 'quilters': {
      const whose = withWhom === null ? 'your quilters take' : `${withWhom} takes`;
      return `${dayCount(days)}, as ${whose}; none chosen yet`;
    }
    case 'usual':
      return `${dayCount(days)} (your usual)${withWhom === null ? ', no quilter chosen yet' : ` for ${who}`}`;
  }
}

/** The last update on a trip: `On the frame 12 Oct`; null if no day of it is known. */
export function lastUpdateWords(trip: Trip, locale: string, on: CalendarDate): string | null {
  const day = lastUpdateOn(trip);
  if (day === null) return null;
  const event = trip.events.findLast((one) => one.on === day);
  const what = event === undefined ? 'Sent' : TRIP_EVENT_WORDS[event.kind];
  return `${what} ${dateWords(day, locale, on)}`;
}

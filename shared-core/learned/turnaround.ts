import type { ContactDetails } from '#core/domain/contact';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { roundUpTo } from '#core/units/rounding';
import { isWellLearned, type Learned, learnedFrom } from './learned';

/** The days of one trip. Projects that traveled both ways in one package count as one case. */
export interface TripDays {
  readonly packageId: string;
  readonly sentOn: CalendarDate | null;
  readonly backOn: CalendarDate | null;
}

/** How long a contact takes: the days to plan with, where that figure comes from, and what past trips show. */
export interface Turnaround {
  readonly days: number;
  readonly from: 'learned' | 'promised' | 'usual';
  readonly learned: Learned | null;
}

/** Days from sent to back, over the trips that ended; null without any. */
export function learnedTurnaround(trips: readonly TripDays[]): Learned | null {
  const ended = new Map<string, number>();
  for (const { packageId, sentOn, backOn } of trips) {
    if (sentOn !== null && backOn !== null)
      ended.set(`${packageId} ${sentOn} ${backOn}`, daysBetween(sentOn, backOn));
  }
  return learnedFrom([...ended.values()]);
}

/** The median of past trips, once there are enough; then the days the contact promises; then the workshop's usual days. */
export function turnaroundOf(
  contact: Pick<ContactDetails, 'promisedDays'>,
  trips: readonly TripDays[],
  usualDays: number,
): Turnaround {
  const learned = learnedTurnaround(trips);
  if (isWellLearned(learned)) return { days: roundUpTo(learned.median, 1), from: 'learned', learned };
  if (contact.promisedDays !== null) return { days: contact.promisedDays, from: 'promised', learned };
  return { days: usualDays, from: 'usual', learned };
}

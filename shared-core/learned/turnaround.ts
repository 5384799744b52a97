import type { ContactDetails } from '#core/domain/contact';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { roundUpTo } from '#core/units/rounding';
import { isWellLearned, type Learned, learnedFrom } from './learned';

/** A trip as far as its days go. Pieces that went and came back together are one case. */
export interface Journey {
  readonly packageId: string;
  readonly sentOn: CalendarDate | null;
  readonly backOn: CalendarDate | null;
}

/** How long somebody takes: whole days to reckon with, where they come from, and what past trips teach. */
export interface Turnaround {
  readonly days: number;
  readonly from: 'learned' | 'promised' | 'usual';
  readonly learned: Learned | null;
}

/** Days from sending to receiving of the trips that ended; without one null. */
export function learnedTurnaround(journeys: readonly Journey[]): Learned | null {
  const ended = new Map<string, number>();
  for (const { packageId, sentOn, backOn } of journeys) {
    if (sentOn !== null && backOn !== null)
      ended.set(`${packageId} ${sentOn} ${backOn}`, daysBetween(sentOn, backOn));
  }
  return learnedFrom([...ended.values()]);
}

/** What past trips teach, once there are enough; else what they promise; else what is usual in this workshop. */
export function turnaroundOf(
  contact: Pick<ContactDetails, 'promisedDays'>,
  journeys: readonly Journey[],
  usualDays: number,
): Turnaround {
  const learned = learnedTurnaround(journeys);
  if (isWellLearned(learned)) return { days: roundUpTo(learned.median, 1), from: 'learned', learned };
  if (contact.promisedDays !== null) return { days: contact.promisedDays, from: 'promised', learned };
  return { days: usualDays, from: 'usual', learned };
}

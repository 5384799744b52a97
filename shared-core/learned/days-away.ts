import type { ContactDetails } from '#core/domain/contact';
import type { StageId } from '#core/domain/ids';
import type { TripDetails } from '#core/domain/trip';
import { daysBetween } from '#core/units/calendar-date';
import type { Learned } from './learned';
import { type Journey, turnaroundOf } from './turnaround';

/** How long a stage is away once it is sent, and whose figure that is. */
export interface DaysAway {
  readonly stageId: StageId;
  readonly days: number;
  /** trip: the days written down for this very trip; else as a `Turnaround` says, or the workshop's where nobody is named. */
  readonly from: 'trip' | 'learned' | 'promised' | 'usual';
  /** Null where nobody is named yet. */
  readonly withWhom: string | null;
  readonly learned: Learned | null;
}

/** Somebody a piece goes to, with all trips to them. */
export interface Taker {
  readonly details: Pick<ContactDetails, 'name' | 'promisedDays'>;
  readonly journeys: readonly Journey[];
}

/**
 * The days to reckon with for a stage that goes out: those of its own trip, where sending and return are written down; else
 * what past trips of whoever takes it teach, once there are enough; else what they promise; else what is usual here.
 */
export function daysAway(
  stageId: StageId,
  trip: Pick<TripDetails, 'sentOn' | 'promisedOn'> | undefined,
  taker: Taker | undefined,
  usualDays: number,
): DaysAway {
  if (taker === undefined) {
    return { stageId, days: usualDays, from: 'usual', withWhom: null, learned: null };
  }
  const { days, from, learned } = turnaroundOf(taker.details, taker.journeys, usualDays);
  const known = { stageId, withWhom: taker.details.name, learned };
  const { sentOn = null, promisedOn = null } = trip ?? {};
  if (sentOn === null || promisedOn === null) return { ...known, days, from };
  return { ...known, days: Math.max(0, daysBetween(sentOn, promisedOn)), from: 'trip' };
}

import type { ContactDetails } from '#core/domain/contact';
import type { StageId } from '#core/domain/ids';
import type { TripDetails } from '#core/domain/trip';
import { daysBetween } from '#core/units/calendar-date';
import type { Learned } from './learned';
import { type TripDays, turnaroundOf } from './turnaround';

/** How long a stage is away once it is sent, and where that figure comes from. */
export interface DaysAway {
  readonly stageId: StageId;
  readonly days: number;
  /**
   * trip: the days entered for this trip; otherwise as in `Turnaround`; quilters: what the quilters on record take, while none is named for
   * this stage; usual: the workshop's setting.
   */
  readonly from: 'trip' | 'learned' | 'promised' | 'quilters' | 'usual';
  /** Null while no contact is named and more than one could be. */
  readonly withWhom: string | null;
  readonly learned: Learned | null;
}

/** A contact, with all trips to them. */
export interface ContactWithTrips {
  readonly details: Pick<ContactDetails, 'name' | 'promisedDays'>;
  readonly trips: readonly TripDays[];
}

/**
 * The days a stage is expected to be away while no quilter is named: as long as the one on record takes, or the middle one of several, the
 * slower of two. With no quilter whose days are known, the workshop's setting.
 */
export function daysAwayUnnamed(
  stageId: StageId,
  quilters: readonly ContactWithTrips[],
  usualDays: number,
): DaysAway {
  const known = quilters
    .map(({ details, trips }) => ({ name: details.name, ...turnaroundOf(details, trips, usualDays) }))
    .filter(({ from }) => from !== 'usual')
    .toSorted((one, other) => one.days - other.days);
  const middle = known[Math.floor(known.length / 2)];
  if (middle === undefined) return { stageId, days: usualDays, from: 'usual', withWhom: null, learned: null };
  const withWhom = known.length === 1 ? middle.name : null;
  return { stageId, days: middle.days, from: 'quilters', withWhom, learned: null };
}

/**
 * The days a stage is expected to be away once a contact is named for it. First choice: the days of its own trip, when both sent and promised dates are
 * entered. Then the contact's past trips, once there are enough; then the days the contact promises; then the workshop's setting.
 */
export function daysAway(
  stageId: StageId,
  trip: Pick<TripDetails, 'sentOn' | 'promisedOn'> | undefined,
  contact: ContactWithTrips,
  usualDays: number,
): DaysAway {
  const { days, from, learned } = turnaroundOf(contact.details, contact.trips, usualDays);
  const ofContact = { stageId, withWhom: contact.details.name, learned };
  const { sentOn = null, promisedOn = null } = trip ?? {};
  if (sentOn === null || promisedOn === null) return { ...ofContact, days, from };
  return { ...ofContact, days: Math.max(0, daysBetween(sentOn, promisedOn)), from: 'trip' };
}

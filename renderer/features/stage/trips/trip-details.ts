import type { Contact } from '#core/contract/contacts';
import type { Trip } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import { isBookedAhead, type TripDetails, tripDetails } from '#core/domain/trip';
import { addDays, type CalendarDate } from '#core/units/calendar-date';

/** What the maker said of a trip, without what the notebook knows of it. */
export function tripDetailsOf(trip: Trip): TripDetails {
  return tripDetails.parse(trip);
}

/** The trip that is agreed for this stage and has not begun; null for none. */
export function bookedTrip({ id, state }: Stage, trips: readonly Trip[]): Trip | null {
  return trips.findLast((trip) => trip.stageId === id && isBookedAhead(trip, state)) ?? null;
}

/** The contact a name stands for, whatever its capitals; undefined for somebody new. */
export function contactNamed(contacts: readonly Contact[], name: string): Contact | undefined {
  const wanted = name.trim().toLowerCase();
  return contacts.find(({ details }) => details.name.toLowerCase() === wanted);
}

/** The day for which whoever takes it promises it, or the workshop's usual one; null until it is sent. */
export function promisedBack(
  { withWhom, sentOn }: Pick<TripDetails, 'withWhom' | 'sentOn'>,
  contacts: readonly Contact[],
  usualDays: number,
): CalendarDate | null {
  const days = contactNamed(contacts, withWhom)?.details.promisedDays ?? usualDays;
  return sentOn === null ? null : addDays(sentOn, days);
}

/**
 * The trip with another name in it. As long as the promised day is the one the notebook put there, it follows the days that
 * the new one promises, or the workshop's usual turn-around.
 */
export function tripTo(
  trip: TripDetails,
  withWhom: string,
  contacts: readonly Contact[],
  usualDays: number,
): TripDetails {
  const { sentOn, promisedOn } = trip;
  const isOurs = promisedOn === promisedBack(trip, contacts, usualDays);
  const moved = { ...trip, withWhom };
  return isOurs && sentOn !== null
    ? { ...moved, promisedOn: promisedBack(moved, contacts, usualDays) }
    : moved;
}

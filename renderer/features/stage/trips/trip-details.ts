import type { Contact } from '#core/contract/contacts';
import type { Trip } from '#core/contract/projects';
import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { type TripDetails, tripDetailsSchema } from '#core/domain/trip';
import { compareQuilters } from '#core/learned/compare-quilters';
import { addDays, type CalendarDate } from '#core/units/calendar-date';
import { today } from '#renderer/text/dates';

/** The details of a trip that the maker enters, without what the notebook adds. */
export function tripDetailsOf(trip: Trip): TripDetails {
  return tripDetailsSchema.parse(trip);
}

/** The trip on record for this stage while it is still at home; null for none. */
export function reservedTrip({ id, state }: Stage, trips: readonly Trip[]): Trip | null {
  if (state !== 'planned' && state !== 'in-hand') return null;
  return trips.findLast((trip) => trip.stageId === id && trip.backOn === null) ?? null;
}

/** The contact of this name, ignoring upper and lower case; undefined for a new name. */
export function contactNamed(contacts: readonly Contact[], name: string): Contact | undefined {
  const wanted = name.trim().toLowerCase();
  return contacts.find(({ details }) => details.name.toLowerCase() === wanted);
}

/** The day the quilter promises it back, or the day by the workshop’s usual turnaround; null until it is sent. */
export function promisedBack(
  { withWhom, sentOn }: Pick<TripDetails, 'withWhom' | 'sentOn'>,
  contacts: readonly Contact[],
  usualDays: number,
): CalendarDate | null {
  const days = contactNamed(contacts, withWhom)?.details.promisedDays ?? usualDays;
  return sentOn === null ? null : addDays(sentOn, days);
}

/**
 * The trip with another quilter. While the promised day is the one the notebook filled in, it follows the new quilter’s days, or
 * the workshop’s usual turnaround.
 */
export function withQuilter(
  trip: TripDetails,
  withWhom: string,
  contacts: readonly Contact[],
  usualDays: number,
): TripDetails {
  const { sentOn, promisedOn } = trip;
  const isFilledIn = promisedOn === promisedBack(trip, contacts, usualDays);
  const moved = { ...trip, withWhom };
  return isFilledIn && sentOn !== null
    ? { ...moved, promisedOn: promisedBack(moved, contacts, usualDays) }
    : moved;
}

/**
 * What the quilter of this name asks for the project by their rates; null when the name is new or no price can be worked out.
 */
export function priceAsked(
  name: string,
  contacts: readonly Contact[],
  measurements: Measurements,
): number | null {
  const contact = contactNamed(contacts, name);
  if (contact?.details.kind !== 'longarm') return null;
  const [offer] = compareQuilters([contact], { measurements, sentOn: today(), wantedOn: null });
  return offer?.priceMinor ?? null;
}

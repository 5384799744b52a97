import type { Contact, ContactTrip } from '#core/contract/contacts';
import { askAfter, type AskAfter, isBookedAhead } from '#core/domain/trip';
import type { CalendarDate } from '#core/units/calendar-date';

/** The pieces of one package that are still away, with the reason to ask after them, if there is one. */
export interface PackageAway {
  readonly contact: Contact;
  readonly trips: readonly ContactTrip[];
  readonly first: ContactTrip;
  readonly ask: AskAfter | null;
}

/** Every package that is out, the most pressing first: those to ask after, then by the promised day. */
export function packagesAway(
  contacts: readonly Contact[],
  on: CalendarDate,
  silentDays: number,
): readonly PackageAway[] {
  const packages = contacts.flatMap((contact) => {
    const away = contact.trips.filter(isAway);
    const ids = [...new Set(away.map(({ packageId }) => packageId))];
    return ids.flatMap((id) => {
      const trips = away.filter(({ packageId }) => packageId === id);
      const [first] = trips;
      return first === undefined ? [] : [{ contact, trips, first, ask: pressingAsk(trips, on, silentDays) }];
    });
  });
  return packages.toSorted(
    (one, other) =>
      (other.ask?.days ?? 0) - (one.ask?.days ?? 0) ||
      (one.first.promisedOn ?? '9999').localeCompare(other.first.promisedOn ?? '9999') ||
      one.contact.details.name.localeCompare(other.contact.details.name),
  );
}

/** A trip that has been sent, or has no day yet, and has not come back. */
function isAway(trip: ContactTrip): boolean {
  return trip.backOn === null && !isBookedAhead(trip, trip.stageState);
}

/** What is agreed with somebody and has not left yet, by whoever takes it. */
export function bookedTrips(contacts: readonly Contact[]): readonly ContactTrip[] {
  return contacts.flatMap(({ trips }) => trips.filter((trip) => isBookedAhead(trip, trip.stageState)));
}

function pressingAsk(trips: readonly ContactTrip[], on: CalendarDate, silentDays: number): AskAfter | null {
  const asks = trips.map((trip) => askAfter(trip, on, silentDays)).filter((ask) => ask !== null);
  return asks.toSorted((one, other) => other.days - one.days)[0] ?? null;
}

/** `3 pieces away with 2 people, 1 to ask after`. */
export function awaySummary(packages: readonly PackageAway[]): string {
  const pieces = packages.reduce((sum, { trips }) => sum + trips.length, 0);
  if (pieces === 0) return 'Nothing is away: every piece is in the house.';
  const people = new Set(packages.map(({ contact }) => contact.id)).size;
  const asks = packages.filter(({ ask }) => ask !== null).length;
  const away = `${pieces === 1 ? '1 piece' : `${String(pieces)} pieces`} away with ${people === 1 ? '1 contact' : `${String(people)} contacts`}`;
  return asks === 0 ? away : `${away}, ${String(asks)} to ask after`;
}
